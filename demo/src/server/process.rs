//! The server as a child process, for tests: killing it is how a test takes
//! the network away.

use std::io::{BufRead, BufReader};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::OnceLock;

use anyhow::{Context, bail};

use super::Site;
use crate::workspace;

/// A running server; it ends with this value.
pub struct ServerProcess {
    child: Child,
    address: String,
    port: u16,
}

impl ServerProcess {
    /// Starts a server and waits for its address.
    pub fn start(site: &Site) -> anyhow::Result<Self> {
        if !site.folder.join("index.html").is_file() {
            bail!("{} holds no app: run demo/run or tests/run first", site.folder.display());
        }
        let mut child = Command::new(program()?)
            .arg("--dir")
            .arg(&site.folder)
            .args(["--port", &site.port.to_string(), "--under", &site.under])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .spawn()
            .context("cannot start the server")?;
        let stdout = child.stdout.take().expect("stdout was piped");
        let mut server = Self { child, address: String::new(), port: site.port };
        BufReader::new(stdout).read_line(&mut server.address)?;
        server.address.truncate(server.address.trim_end().len());
        server.port = port_of(&server.address).context("the server ended without an address")?;
        Ok(server)
    }

    /// Where the app is, with a slash at the end.
    pub fn address(&self) -> &str {
        &self.address
    }

    /// The port in use.
    pub fn port(&self) -> u16 {
        self.port
    }

    /// Ends it and makes sure that nobody answers any more.
    pub fn kill(&mut self) -> anyhow::Result<()> {
        self.child.kill()?;
        self.child.wait()?;
        if TcpStream::connect(("127.0.0.1", self.port)).is_ok() {
            bail!("something still answers on port {}", self.port);
        }
        Ok(())
    }
}

impl Drop for ServerProcess {
    fn drop(&mut self) {
        // It may have ended already: there is nothing left to do then.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

fn port_of(address: &str) -> Option<u16> {
    address.strip_prefix("http://127.0.0.1:")?.split('/').next()?.parse().ok()
}

/// The server's program, built when it is not fresh. Only a crate's own tests
/// are told by cargo where its programs are, so it is asked for here.
fn program() -> anyhow::Result<&'static Path> {
    static PROGRAM: OnceLock<Result<PathBuf, String>> = OnceLock::new();
    let built = PROGRAM.get_or_init(|| build().map_err(|e| format!("{e:#}")));
    built.as_deref().map_err(|e| anyhow::anyhow!("{e}"))
}

fn build() -> anyhow::Result<PathBuf> {
    let arguments =
        ["build", "--quiet", "--locked", "--package", "asfound-demo", "--no-default-features", "--bin", "serve"];
    workspace::run(workspace::cargo().args(arguments))?;
    Ok(workspace::target().join("debug/serve"))
}
