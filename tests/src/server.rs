//! A small server for the finished page: one folder, read only, this computer
//! only.

mod answer;
mod kinds;

use std::{
    io,
    net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream},
    path::PathBuf,
    sync::{
        Arc,
        atomic::{AtomicBool, Ordering},
    },
    thread::{self, JoinHandle},
    time::Duration,
};

/// A running server. It ends when it is stopped or dropped.
pub struct Server {
    address: SocketAddr,
    ending: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
}

impl Server {
    /// Serves a folder on this port of 127.0.0.1; 0 takes any free port.
    pub fn start(folder: impl Into<PathBuf>, port: u16) -> io::Result<Server> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port))?;
        let address = listener.local_addr()?;
        let folder = Arc::new(folder.into());
        let ending = Arc::new(AtomicBool::new(false));
        let thread = thread::spawn({
            let ending = ending.clone();
            move || {
                for stream in listener.incoming() {
                    if ending.load(Ordering::SeqCst) {
                        break;
                    }
                    let (Ok(stream), folder) = (stream, folder.clone()) else {
                        continue;
                    };
                    // A visitor who hangs up early is no concern of ours.
                    thread::spawn(move || answer::answer(&folder, stream).ok());
                }
            }
        });
        Ok(Server {
            address,
            ending,
            thread: Some(thread),
        })
    }

    /// The port in use.
    pub fn port(&self) -> u16 {
        self.address.port()
    }

    /// The address of the start page, ending in a slash.
    pub fn url(&self) -> String {
        format!("http://{}/", self.address)
    }

    /// Stops answering; from here on the port refuses connections.
    pub fn stop(&mut self) {
        let Some(thread) = self.thread.take() else {
            return;
        };
        self.ending.store(true, Ordering::SeqCst);
        // The listener wakes up only for a visitor.
        TcpStream::connect_timeout(&self.address, Duration::from_secs(5)).ok();
        thread.join().ok();
    }

    /// Waits until something else ends the server.
    pub fn wait(&mut self) {
        if let Some(thread) = self.thread.take() {
            thread.join().ok();
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stop();
    }
}
