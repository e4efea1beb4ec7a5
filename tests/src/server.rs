//! A small server for the finished page: one folder, read only, this computer
//! only.

use http::{HeaderName, HeaderValue, header};
use hyper::{body::Incoming, server::conn::http1, service::service_fn};
use hyper_util::rt::TokioIo;
use std::{
    io,
    net::{Ipv4Addr, SocketAddr},
    path::PathBuf,
    thread::{self, JoinHandle},
};
use tokio::{net::TcpListener, runtime, sync::oneshot};
use tower_http::services::ServeDir;
use tower_service::Service;

/// What goes with every answer, beside what the file itself asks for.
const HEADERS: [(HeaderName, &str); 2] = [
    (header::CACHE_CONTROL, "no-cache"),
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
];

/// A running server. It ends when it is stopped or dropped.
pub struct Server {
    address: SocketAddr,
    /// Dropped, it ends the server.
    ending: Option<oneshot::Sender<()>>,
    thread: Option<JoinHandle<()>>,
}

impl Server {
    /// Serves a folder on this port of 127.0.0.1; 0 takes any free port. A file
    /// that somebody has compressed beforehand, and lies beside itself with
    /// `.br` at its end, is sent so to whoever takes that.
    pub fn start(folder: impl Into<PathBuf>, port: u16) -> io::Result<Server> {
        let files = ServeDir::new(folder.into()).precompressed_br();
        let runtime = runtime::Builder::new_current_thread()
            .enable_all()
            .build()?;
        let listener = runtime.block_on(TcpListener::bind((Ipv4Addr::LOCALHOST, port)))?;
        let address = listener.local_addr()?;
        let (ending, ended) = oneshot::channel();
        // With the runtime go the listener and every open connection.
        let thread = thread::spawn(move || {
            runtime.block_on(async {
                tokio::select! {
                    _ = ended => (),
                    () = answer(listener, files) => (),
                }
            });
        });
        Ok(Server {
            address,
            ending: Some(ending),
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
        self.ending = None;
        if let Some(thread) = self.thread.take() {
            thread.join().ok();
        }
    }

    /// Waits until something else ends the server.
    pub fn wait(mut self) {
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

/// Answers whoever comes, for ever.
async fn answer(listener: TcpListener, files: ServeDir) {
    loop {
        let Ok((stream, _)) = listener.accept().await else {
            continue;
        };
        let files = files.clone();
        let one = service_fn(move |request: http::Request<Incoming>| {
            let mut files = files.clone();
            async move {
                let mut answer = files.call(request).await?;
                for (name, value) in HEADERS {
                    answer
                        .headers_mut()
                        .insert(name, HeaderValue::from_static(value));
                }
                // The same file with the same time may hold something else in a
                // test: nobody asks whether it has changed since.
                answer.headers_mut().remove(header::LAST_MODIFIED);
                Ok::<_, std::convert::Infallible>(answer)
            }
        });
        // A visitor who hangs up early is no concern of ours.
        tokio::spawn(async move {
            let connection = http1::Builder::new()
                .keep_alive(false)
                .serve_connection(TokioIo::new(stream), one);
            connection.await.ok();
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::{
        fs,
        io::{Read, Write},
        net::TcpStream,
    };

    /// What a server of this crate's own folder answers.
    fn ask(request: &str) -> String {
        let server = Server::start(env!("CARGO_MANIFEST_DIR"), 0).unwrap();
        let mut stream = TcpStream::connect(server.address).unwrap();
        write!(stream, "{request} HTTP/1.1\r\nHost: here\r\n\r\n").unwrap();
        let mut answer = String::new();
        stream.read_to_string(&mut answer).unwrap();
        answer
    }

    #[test]
    fn a_file_comes_whole_and_says_what_it_is() {
        let answer = ask("GET /axe/package.json?from=home");
        let (head, body) = answer.split_once("\r\n\r\n").unwrap();
        let head = head.to_ascii_lowercase();
        for part in [
            "200 ok",
            "content-type: application/json",
            "cache-control: no-cache",
            "x-content-type-options: nosniff",
            "connection: close",
        ] {
            assert!(head.contains(part), "{part} is not in {head}");
        }
        let file = concat!(env!("CARGO_MANIFEST_DIR"), "/axe/package.json");
        assert_eq!(body, fs::read_to_string(file).unwrap());
    }

    #[test]
    fn nothing_else_is_to_be_had() {
        for path in ["/nowhere", "/../Cargo.toml", "/%2e%2e/Cargo.toml", "/%zz"] {
            let answer = ask(&format!("GET {path}"));
            assert!(answer.starts_with("HTTP/1.1 4"), "{path}: {answer}");
        }
        assert!(ask("POST /Cargo.toml").starts_with("HTTP/1.1 405"));
    }

    #[test]
    fn a_stopped_server_hangs_up_and_is_gone() {
        let mut server = Server::start(env!("CARGO_MANIFEST_DIR"), 0).unwrap();
        let mut waiting = TcpStream::connect(server.address).unwrap();
        server.stop();
        assert_eq!(waiting.read(&mut [0]).unwrap_or(0), 0);
        assert!(TcpStream::connect(server.address).is_err());
    }
}
