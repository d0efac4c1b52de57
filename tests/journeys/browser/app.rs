//! The finished app on a server that can go away and come back.

use std::path::PathBuf;

use asfound_demo::server::{ServerProcess, Site};
use asfound_demo::workspace;

/// The app, served on loopback.
pub struct App {
    server: Option<ServerProcess>,
    site: Site,
    address: String,
}

impl App {
    /// Serves `web/dist`.
    pub fn start() -> anyhow::Result<Self> {
        Self::start_from(workspace::dist(), "/")
    }

    /// Serves another folder, below a path with a slash at both ends.
    pub fn start_from(folder: PathBuf, under: &str) -> anyhow::Result<Self> {
        let mut site = Site { folder, under: under.into(), port: 0 };
        let server = ServerProcess::start(&site)?;
        site.port = server.port();
        Ok(Self { address: server.address().to_owned(), site, server: Some(server) })
    }

    /// Where the app is, with a slash at the end.
    pub fn address(&self) -> &str {
        &self.address
    }

    /// Takes the network away: the server ends and its port refuses.
    pub fn go_offline(&mut self) -> anyhow::Result<()> {
        match self.server.take() {
            Some(mut server) => server.kill(),
            None => Ok(()),
        }
    }

    /// The network comes back, at the same address.
    pub fn go_online(&mut self) -> anyhow::Result<()> {
        if self.server.is_none() {
            self.server = Some(ServerProcess::start(&self.site)?);
        }
        Ok(())
    }

    /// Serves something else at the same address.
    pub fn change(&mut self, site: impl FnOnce(&mut Site)) -> anyhow::Result<()> {
        self.go_offline()?;
        site(&mut self.site);
        self.go_online()
    }
}
