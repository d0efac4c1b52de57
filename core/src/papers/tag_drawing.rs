//! The tie-on tag as it is drawn everywhere a part is meant: outline and free end show where the part stands.

use std::fmt::Write;

use super::list::{Mark, Row};
use crate::job::tag_text;
use crate::job::vocabulary::Standing;

/// Hundredths of the height.
pub(super) const HEIGHT: usize = 100;
pub(super) const FOUR_FIGURES: usize = 220;
pub(super) const ONE_MORE: usize = 34;
pub(super) const LENGTH: usize = 137;
pub(super) const CUT: usize = 27;
pub(super) const HOLE_IN: usize = 32;
pub(super) const RING: usize = 16;

/// The tag of a part as inline SVG, `0147` in words for those who do not see it; nothing when it has none.
pub(super) fn tag_drawing(row: &Row) -> String {
    let Some(tag) = row.tag else { return String::new() };
    let missing = row.marks.contains(&Mark::MissingFromStart);
    drawn(tag, row.standing, row.irreplaceable, missing, row.marks.contains(&Mark::StruckOut))
}

/// The same by what it shows.
pub(super) fn tag_of(tag: i64, standing: Standing, irreplaceable: bool, missing: bool) -> String {
    drawn(tag, standing, irreplaceable, missing, false)
}

fn drawn(tag: i64, standing: Standing, irreplaceable: bool, missing: bool, struck: bool) -> String {
    let figures = tag_text(tag);
    let more = ONE_MORE * figures.len().saturating_sub(4);
    let (width, length) = (FOUR_FIGURES + more, LENGTH + more);
    let mut svg = format!(
        "<svg class=\"{}\" viewBox=\"-4 -4 {} {}\" role=\"img\" aria-label=\"{figures}\"><path d=\"{}\"/>",
        classes(standing, missing),
        width + 8,
        HEIGHT + 8,
        outline(standing, width),
    );
    if irreplaceable {
        let (right, bottom, cut) = (width - 9, HEIGHT - 9, CUT + 4);
        let low = HEIGHT - cut;
        let _ = write!(svg, "<path d=\"M{cut} 9H{right}V{bottom}H{cut}L9 {low}V{cut}Z\"/>");
    }
    svg.push_str("<circle cx=\"32\" cy=\"50\" r=\"16\"/><circle class=\"hole\" cx=\"32\" cy=\"50\" r=\"8\"/>");
    if missing {
        svg.push_str("<path d=\"M20 38L44 62M44 38L20 62\"/>");
    }
    let _ = write!(
        svg,
        "<text x=\"62\" y=\"72\" textLength=\"{length}\" lengthAdjust=\"spacingAndGlyphs\">{figures}</text>"
    );
    if struck {
        let _ = write!(svg, "<path d=\"M48 50H{}\"/>", width - 8);
    }
    svg.push_str("</svg>");
    svg
}

const fn classes(standing: Standing, missing: bool) -> &'static str {
    if missing {
        return "tag missing";
    }
    match standing {
        Standing::On => "tag on",
        Standing::Tried => "tag tried",
        Standing::Ready => "tag ready",
        _ => "tag",
    }
}

/// Clips in the lower edge: one when judged, two when decided.
fn outline(standing: Standing, width: usize) -> String {
    let clips: &[usize] = match standing {
        Standing::Judged => &[50],
        Standing::Decided => &[35, 62],
        _ => &[],
    };
    let clips: String = clips
        .iter()
        .map(|from_end| width - from_end)
        .map(|at| format!("H{}L{at} 84L{} 100", at + 10, at - 10))
        .collect();
    // The free end: pointing away, cut in, torn.
    let end = match standing {
        Standing::Out => format!("H{0}L{width} 50L{0} 100", width - 29),
        Standing::OnOrder => format!("H{width}L{} 50L{width} 100", width - 21),
        Standing::Refitted => {
            let inner = width - 13;
            format!("H{inner}L{width} 15L{inner} 30L{width} 50L{inner} 70L{width} 85L{inner} 100")
        }
        _ => format!("H{width}V100"),
    };
    format!("M{CUT} 0{end}{clips}H{CUT}L0 {}V{CUT}Z", HEIGHT - CUT)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn standing_shows_in_the_outline() {
        assert_eq!(outline(Standing::Off, 220), "M27 0H220V100H27L0 73V27Z");
        assert_eq!(outline(Standing::Judged, 220), "M27 0H220V100H180L170 84L160 100H27L0 73V27Z");
        assert_eq!(outline(Standing::Decided, 220).matches("84").count(), 2);
        assert_eq!(outline(Standing::Out, 220), "M27 0H191L220 50L191 100H27L0 73V27Z");
        assert_eq!(outline(Standing::OnOrder, 220), "M27 0H220L199 50L220 100H27L0 73V27Z");
    }
}
