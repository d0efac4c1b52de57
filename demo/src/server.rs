//! A tiny static server for the finished app, on loopback.

mod answer;
mod process;

use std::path::PathBuf;
use std::sync::Arc;
use std::thread;

use anyhow::anyhow;
use tiny_http::Server;

pub use process::ServerProcess;

/// Browsers open about six connections to a host and keep them; every waiting
/// request needs a thread that is free.
const THREADS: usize = 8;

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
pub fn serve(site: Site, ready: impl FnOnce(&str)) -> anyhow::Result<()> {
    let server =
        Server::http(("127.0.0.1", site.port)).map_err(|e| anyhow!("cannot listen on port {}: {e}", site.port))?;
    let server = Arc::new(server);
    ready(&format!("http://{}{}", server.server_addr(), site.under));
    let site = Arc::new(site);
    let threads: Vec<_> = (0..THREADS)
        .map(|_| {
            let (server, site) = (Arc::clone(&server), Arc::clone(&site));
            thread::spawn(move || {
                while let Ok(request) = server.recv() {
                    answer::answer(&site, request);
                }
            })
        })
        .collect();
    for thread in threads {
        thread.join().map_err(|_| anyhow!("a serving thread ended"))?;
    }
    Ok(())
}
