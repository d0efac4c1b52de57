//! The sample job: an invented light van and its donor, two assemblies taken apart, with drawn pictures. It is recorded
//! through the core like any other job, and is the same to the byte every time.

#![expect(clippy::inconsistent_digit_grouping, reason = "amounts are written as pounds_pence")]

mod bench;
mod front_hub;
mod garage;
mod gearings;
mod judged;
mod outline;
mod parts;
mod pen;
mod picture;
mod quote;
mod rear_axle;
mod rear_brakes;
mod refitted;
mod sheet;
mod steering;
mod terms;

use std::fs;
use std::path::Path;

use anyhow::{Context as _, anyhow, ensure};
use asfound_core::job::{Change, Command, Context, Job, Sent, apply};
use asfound_core::papers::PaperWords;
use asfound_core::papers::job_file::{JobFileError, Writer};
use asfound_core::quantity::Millis;
use asfound_core::record::{EntryId, Hash, Held, Id, Replica};

use bench::{Bench, SAMPLE};

/// Writes the sample job as a job file.
///
/// # Errors
/// When it cannot be drawn, recorded or written.
pub fn write(to: &Path) -> anyhow::Result<()> {
    fs::write(to, job_file()?).with_context(|| format!("writing {}", to.display()))
}

/// The sample job as a job file.
///
/// # Errors
/// When a picture cannot be drawn, or the core refuses a command.
pub fn job_file() -> anyhow::Result<Vec<u8>> {
    let mut bench = Bench::new();
    record(&mut bench)?;
    let edition = Edition::of(&bench.commands)?;
    let job = edition.carried_out(&bench.commands)?;
    let failed = |error: JobFileError| anyhow!("writing the sample job: {error:?}");
    let mut writer = Writer::begin(Vec::new(), &job, &PaperWords::default()).map_err(failed)?;
    for (hash, bytes) in &bench.photos {
        writer.blob(*hash, bytes).map_err(failed)?;
    }
    let written = writer.finish().map_err(failed)?;
    ensure!(written.missing.is_empty(), "pictures are missing: {:?}", written.missing);
    Ok(written.sink)
}

fn record(bench: &mut Bench) -> anyhow::Result<()> {
    bench.day("2026-09-04T18:00:00Z");
    let garage = garage::Garage::begin(bench);
    front_hub::strip(bench, &garage)?;
    steering::strip(bench, &garage)?;
    rear_brakes::strip(bench, &garage)?;
    rear_axle::strip(bench, &garage)?;
    judged::judge(bench)?;
    terms::agree(bench, &garage);
    gearings::swap(bench, &garage);
    refitted::refit(bench, &garage)?;
    bench.say(garage.job, vec![Change::HandedOut(bench.now())]);
    Ok(())
}

/// What is in it, as four bytes. They stand in every id: a sample that was changed is another job, and never mixes with one
/// that somebody has opened before.
struct Edition([u8; 4]);

impl Edition {
    fn of(commands: &[(Millis, Command)]) -> anyhow::Result<Self> {
        let mut edition = [0; 4];
        edition.copy_from_slice(&Hash::of(&serde_json::to_vec(commands)?).bytes()[..4]);
        Ok(Self(edition))
    }

    /// The same commands with the edition in every id.
    fn named(&self, command: &Command) -> anyhow::Result<Command> {
        let prefix = |edition: [u8; 4]| {
            let mut bytes = [0; 16];
            bytes[..8].copy_from_slice(&SAMPLE);
            bytes[8..12].copy_from_slice(&edition);
            Id::from_bytes(bytes).to_string()[..24].to_owned()
        };
        let text = serde_json::to_string(command)?.replace(&prefix([0; 4]), &prefix(self.0));
        Ok(serde_json::from_str(&text)?)
    }

    fn carried_out(&self, commands: &[(Millis, Command)]) -> anyhow::Result<Job> {
        let mut replica = *b"samp\0\0\0\0";
        replica[4..].copy_from_slice(&self.0);
        let replica = Replica::from_bytes(replica);
        let mut device = [0; 16];
        device[..8].copy_from_slice(&SAMPLE);
        device[8..12].copy_from_slice(&self.0);
        let device = Id::from_bytes(device);
        let mut job = Job::new();
        for (number, (at, command)) in (1..).zip(commands) {
            let mut command = self.named(command)?;
            if let Command::Change { changes, .. } = &mut command
                && changes.iter().any(|change| matches!(change, Change::HandedOut(_)))
            {
                // The file holds all that came before: nothing is due to be kept yet.
                let seq = job.record().last_seq(replica);
                changes.push(Change::Held(Held(vec![EntryId { replica, seq }])));
            }
            let sent = Sent { id: Id::derived(device, "command", number), command };
            let applied = apply(&job, &sent, &Context { replica, device, at: *at });
            ensure!(applied.problems.is_empty(), "refused: {:?} {:?}", sent.command, applied.problems);
            job.absorb(applied.entries);
        }
        Ok(job)
    }
}
