//! Reads one request and answers it.

use super::kinds::content_type;
use std::{
    fs,
    io::{self, BufRead, BufReader, Read, Write},
    net::TcpStream,
    path::{Path, PathBuf},
    time::Duration,
};

/// No request for a page of ours is longer than this, in bytes.
const LONGEST_REQUEST: u64 = 64 * 1024;

/// Answers the request that arrives on this connection, then closes it.
pub fn answer(folder: &Path, mut stream: TcpStream) -> io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(30)))?;
    let mut lines = BufReader::new(stream.try_clone()?.take(LONGEST_REQUEST)).lines();
    let Some(first) = lines.next().transpose()? else {
        return Ok(());
    };
    let mut packed = false;
    for line in lines.by_ref() {
        let line = line?.to_ascii_lowercase();
        if line.is_empty() {
            break;
        }
        packed |= line.starts_with("accept-encoding:") && line.contains("br");
    }
    let mut words = first.split(' ');
    let (method, target) = (words.next().unwrap_or(""), words.next().unwrap_or(""));
    if method != "GET" && method != "HEAD" {
        return send(
            &mut stream,
            "405 Method Not Allowed",
            "text/plain",
            b"",
            true,
        );
    }
    let found = file_for(folder, target).and_then(|file| Some((fs::read(&file).ok()?, file)));
    let body = method == "GET";
    match found {
        Some((bytes, file)) => {
            let kind = content_type(&file);
            // Compressed beforehand, where somebody has done so.
            match fs::read(format!("{}.br", file.display())) {
                Ok(bytes) if packed => {
                    let kind = format!("{kind}\r\nContent-Encoding: br");
                    send(&mut stream, "200 OK", &kind, &bytes, body)
                }
                _ => send(&mut stream, "200 OK", kind, &bytes, body),
            }
        }
        None => send(
            &mut stream,
            "404 Not Found",
            "text/plain",
            b"Not here.\n",
            body,
        ),
    }
}

fn send(
    stream: &mut TcpStream,
    status: &str,
    kind: &str,
    bytes: &[u8],
    body: bool,
) -> io::Result<()> {
    write!(
        stream,
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {}\r\n\
         Cache-Control: no-cache\r\nX-Content-Type-Options: nosniff\r\n\
         Connection: close\r\n\r\n",
        bytes.len()
    )?;
    if body {
        stream.write_all(bytes)?;
    }
    stream.flush()
}

/// The file that a request asks for, never one outside the folder.
fn file_for(folder: &Path, target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?;
    let path = decoded(path.strip_prefix('/')?)?;
    let mut file = folder.to_path_buf();
    for part in path.split('/').filter(|part| !part.is_empty()) {
        if part.starts_with('.') || part.contains(['\\', ':', '\0']) {
            return None;
        }
        file.push(part);
    }
    if path.is_empty() || path.ends_with('/') {
        file.push("index.html");
    }
    Some(file)
}

/// Undoes the %41 way of writing characters.
fn decoded(text: &str) -> Option<String> {
    let mut bytes = text.bytes();
    let mut out = Vec::with_capacity(text.len());
    while let Some(byte) = bytes.next() {
        if byte == b'%' {
            let high = char::from(bytes.next()?).to_digit(16)?;
            let low = char::from(bytes.next()?).to_digit(16)?;
            out.push(u8::try_from(high * 16 + low).ok()?);
        } else {
            out.push(byte);
        }
    }
    String::from_utf8(out).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(target: &str, wanted: Option<&str>) {
        let wanted = wanted.map(|path| Path::new("page").join(path));
        assert_eq!(file_for(Path::new("page"), target), wanted);
    }

    #[test]
    fn a_request_names_a_file_in_the_folder() {
        check("/", Some("index.html"));
        check("/?from=home", Some("index.html"));
        check("/icons/mark.svg", Some("icons/mark.svg"));
        check("/a%20b.txt", Some("a b.txt"));
    }

    #[test]
    fn a_request_cannot_leave_the_folder() {
        check("/../secret", None);
        check("/%2e%2e/secret", None);
        check("/icons/..%2f..%2fsecret", None);
        check("/c:\\secret", None);
        check("secret", None);
    }

    #[test]
    fn a_broken_request_names_nothing() {
        check("/%4", None);
        check("/%zz", None);
        check("/%ff", None);
    }
}
