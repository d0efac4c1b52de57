//! A tiny static server for the finished app, on loopback.

mod answer;
mod process;

use std::net::TcpListener;
use std::path::PathBuf;
use std::sync::Arc;
use std::thread;

use anyhow::Context;

pub use process::ServerProcess;

/// What is served, and where.
pub struct Site {
    /// The folder with `index.html`.
    pub folder: PathBuf,
    /// The path below which it appears, with a slash at both ends.
    pub under: String,
    /// The port, or 0 for any that is free.
    pub port: u16,
}

/// Binds, tells `ready` the address, and serves for ever.
///
/// Each connection has a thread of its own: a browser opens several before it asks anything, and none may wait for another.
pub fn serve(site: Site, ready: impl FnOnce(&str)) -> anyhow::Result<()> {
    let listener =
        TcpListener::bind(("127.0.0.1", site.port)).with_context(|| format!("cannot listen on port {}", site.port))?;
    ready(&format!("http://{}{}", listener.local_addr()?, site.under));
    let site = Arc::new(site);
    for stream in listener.incoming() {
        let (site, stream) = (Arc::clone(&site), stream.context("no connection can be taken any more")?);
        // A browser that has gone away is its own affair.
        thread::spawn(move || answer::answer(&site, &stream).ok());
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::{Read, Write};
    use std::net::TcpStream;
    use std::sync::mpsc;
    use std::time::Duration;

    /// A browser opens its connections all at once and keeps them: none may wait for another to be closed.
    #[test]
    fn answers_every_connection_while_the_others_stay_open() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join("index.html"), "page").unwrap();
        let site = Site { folder: folder.path().to_owned(), under: "/".into(), port: 0 };
        let (tell, ready) = mpsc::channel();
        thread::spawn(move || serve(site, |address| tell.send(address.to_owned()).unwrap()));
        let address = ready.recv().unwrap();
        let host = address.trim_start_matches("http://").trim_end_matches('/');
        for round in 0..20 {
            let mut open: Vec<_> = (0..8).map(|_| TcpStream::connect(host).unwrap()).collect();
            for stream in &mut open {
                stream.set_read_timeout(Some(Duration::from_secs(2))).unwrap();
                stream.write_all(b"GET / HTTP/1.1\r\nHost: here\r\n\r\n").unwrap();
            }
            for stream in &mut open {
                let mut answer = [0; 15];
                stream.read_exact(&mut answer).unwrap_or_else(|error| panic!("round {round}: {error}"));
                assert_eq!(&answer, b"HTTP/1.1 200 OK");
            }
        }
    }
}
