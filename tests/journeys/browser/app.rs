//! The finished app on a server that can go away and come back.

use asfound_demo::server::ServerProcess;
use asfound_demo::workspace;

/// The app, served on loopback from `web/dist`.
pub struct App {
    server: Option<ServerProcess>,
    address: String,
    port: u16,
}

impl App {
    /// Starts a server on any free port.
    pub fn start() -> anyhow::Result<Self> {
        let server = ServerProcess::start(&workspace::dist())?;
        Ok(Self { address: server.address().to_owned(), port: server.port(), server: Some(server) })
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
            self.server = Some(ServerProcess::start_on(&workspace::dist(), self.port)?);
        }
        Ok(())
    }
}
