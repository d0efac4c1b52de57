//! Scrolling through 10,000 rows.

use std::time::Duration;

use asfound_journeys::{Profile, Size};

use crate::figures::{Figures, ms};
use crate::garage::{browser, parts_alone};
use crate::row::Row;
use crate::site::Site;

const PARTS: usize = 10_000;

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let site = Site::start()?;
    let profile = Profile::fresh()?;
    let mut rows = Vec::new();
    let filling = browser(Size::Phone, &profile)?;
    parts_alone(&site, &filling, PARTS)?;
    filling.quit()?;
    for (size, name) in [(Size::Phone, "phone"), (Size::Desk, "desk")] {
        let browser = browser(size, &profile)?;
        site.open_app(&browser, "parts")?;
        browser.wait_for_js("__seen.rows?.shown", Duration::from_secs(30))?;
        let plain = browser.run_async_js(STILL, vec![])?;
        let seen = browser.run_async_js(SCROLL, vec![])?;
        let (frames, still) = (Figures::read(&seen["frames"])?, Figures::read(&plain)?);
        let over = frames.over(33.5);
        let nodes = seen["nodes"].as_u64().unwrap_or_default();
        let blank = seen["blank"].as_u64().unwrap_or_default();
        anyhow::ensure!(seen["moved"].as_f64().unwrap_or_default() > 30_000.0, "it did not scroll: {seen}");
        rows.push(
            Row::new(
                format!("Scrolling 10,000 rows at {name} size, {} frames", frames.count()),
                format!("longest frame {} ms, p95 {} ms, {over} over 33 ms", ms(frames.most()), ms(frames.p95())),
            )
            .beside(format!("the same page standing still: longest {} ms", ms(still.most())))
            .target("none > 33 ms", over == 0),
        );
        rows.push(
            Row::new(
                format!("… most nodes on the page ({name}); frames with a row not drawn yet"),
                format!("{nodes}; {blank} of {}", frames.count()),
            )
            .target("< 1,500 nodes", nodes < 1500),
        );
    }
    Ok(rows)
}

const STILL: &str = "const frames = [];
    let last = await new Promise(requestAnimationFrame);
    for (let i = 0; i < 240; i++) {
        const now = await new Promise(requestAnimationFrame);
        frames.push(now - last);
        last = now;
    }
    return frames;";

/// A steady flick: 180 px a frame for five seconds, a jump to the middle, and back up.
const SCROLL: &str = "const box = [document.scrollingElement, document.querySelector('.parts-pane')].find((one) => one && one.scrollHeight > one.clientHeight + 1000);
    const all = document.querySelector('.parts-all');
    const frames = [];
    let [nodes, blank, moved] = [0, 0, 0];
    let last = await new Promise(requestAnimationFrame);
    for (let i = 0; i < 600; i++) {
        const before = box.scrollTop;
        box.scrollBy(0, i < 300 ? 180 : i === 300 ? 300000 : -180);
        moved += Math.abs(box.scrollTop - before);
        const now = await new Promise(requestAnimationFrame);
        frames.push(now - last);
        last = now;
        nodes = Math.max(nodes, document.getElementsByTagName('*').length);
        const middle = document.elementFromPoint(innerWidth / 3, innerHeight / 2);
        if (!middle?.closest('.row, .section-head')) blank++;
    }
    return { frames, nodes, blank, moved };";
