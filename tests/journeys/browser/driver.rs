//! The driver's process, and the display of an engine that needs one.

use std::io::{BufRead, BufReader};
use std::net::{TcpListener, TcpStream};
use std::process::{Child, Command, Stdio};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use anyhow::{Context, bail};

use crate::engine::Engine;
use crate::processes::kill_descendants;
use crate::profile::Profile;

/// A driver and all that it starts; it ends with this value.
pub(crate) struct Driver {
    child: Child,
    display: Option<Child>,
    port: u16,
    killed: Arc<AtomicBool>,
}

/// Kills a browser with all its processes, but not its driver.
pub struct Killer {
    driver: u32,
    killed: Arc<AtomicBool>,
}

impl Killer {
    /// How many processes were ended.
    pub fn kill(&self) -> usize {
        self.killed.store(true, Ordering::Relaxed);
        kill_descendants(self.driver)
    }
}

impl Driver {
    pub(crate) fn killer(&self) -> Killer {
        Killer { driver: self.child.id(), killed: Arc::clone(&self.killed) }
    }

    /// Nobody is there to be asked any more.
    pub(crate) fn was_killed(&self) -> bool {
        self.killed.load(Ordering::Relaxed)
    }

    pub(crate) fn start(engine: Engine, profile: &Profile) -> anyhow::Result<Self> {
        let port = free_port()?;
        let program = engine.driver();
        let mut command = Command::new(&program);
        command.arg(format!("--port={port}")).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
        let mut display = None;
        match engine {
            Engine::Chromium => {}
            Engine::Firefox => _ = command.arg(format!("--websocket-port={}", free_port()?)),
            Engine::WebKit => {
                let (child, name) = start_display()?;
                display = Some(child);
                command.env("DISPLAY", name).env("XDG_CONFIG_HOME", profile.desktop_settings()?);
            }
        }
        let child = command.spawn().with_context(|| format!("cannot start {}", program.display()))?;
        let driver = Self { child, display, port, killed: Arc::default() };
        driver.wait_until_it_listens()?;
        Ok(driver)
    }

    pub(crate) fn address(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }

    /// Ends the browser as a phone does: at once, with no chance to finish.
    pub(crate) fn kill_browser(&self) -> usize {
        kill_descendants(self.child.id())
    }

    fn wait_until_it_listens(&self) -> anyhow::Result<()> {
        let start = Instant::now();
        while TcpStream::connect(("127.0.0.1", self.port)).is_err() {
            if start.elapsed() > Duration::from_secs(20) {
                bail!("the driver does not listen on port {}", self.port);
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        Ok(())
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        self.kill_browser();
        end(&mut self.child);
        if let Some(display) = &mut self.display {
            end(display);
        }
    }
}

/// It may have ended already: there is nothing left to do then.
fn end(child: &mut Child) {
    let _ = child.kill();
    let _ = child.wait();
}

fn free_port() -> anyhow::Result<u16> {
    Ok(TcpListener::bind(("127.0.0.1", 0))?.local_addr()?.port())
}

/// A display of our own; the server picks a free number and tells it.
fn start_display() -> anyhow::Result<(Child, String)> {
    let mut child = Command::new("Xvfb")
        .args(["-displayfd", "1", "-screen", "0", "1400x1000x24", "-nolisten", "tcp"])
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .context("cannot start Xvfb")?;
    let mut number = String::new();
    BufReader::new(child.stdout.take().expect("stdout was piped")).read_line(&mut number)?;
    if number.trim().is_empty() {
        end(&mut child);
        bail!("Xvfb ended without a display");
    }
    Ok((child, format!(":{}", number.trim())))
}
