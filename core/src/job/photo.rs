use super::view::{JointView, NoteView, PhotoView};
use super::whole::Job;
use crate::record::{FieldName, Hash, Id, Kind};

impl Job {
    /// The photos of a record in order, struck-out ones last.
    pub(crate) fn photos_of(&self, of: Id) -> Vec<PhotoView> {
        let records = self.ordered(Kind::Photo, FieldName::Of, of, true).into_iter();
        let photos = records.map(|record| {
            let marks = self.ordered(Kind::Mark, FieldName::Of, record.id, false);
            PhotoView { record, marks }
        });
        photos.collect()
    }

    /// One photo with its marks.
    #[must_use]
    pub fn photo_view(&self, photo: Id) -> Option<PhotoView> {
        let record = self.record_view(photo).filter(|record| record.kind == Kind::Photo)?;
        Some(PhotoView { marks: self.ordered(Kind::Mark, FieldName::Of, photo, false), record })
    }

    /// The notes of a record in order of time.
    pub(crate) fn notes_of(&self, of: Id) -> Vec<NoteView> {
        let records = self.ordered(Kind::Note, FieldName::Of, of, false).into_iter();
        let notes = records.map(|record| {
            let slices = self.ordered(Kind::Slice, FieldName::Of, record.id, false);
            NoteView { record, slices }
        });
        notes.collect()
    }

    /// The joints that point at a record by `field`, each with its pieces.
    pub(super) fn joints_of(&self, field: FieldName, target: Id) -> Vec<JointView> {
        let records = self.ordered(Kind::Joint, field, target, false).into_iter();
        let joints = records.map(|record| {
            let pieces = self.ordered(Kind::Piece, FieldName::Joint, record.id, false);
            JointView { record, pieces }
        });
        joints.collect()
    }

    /// Every photo and stretch of sound that the record names, by its hash, struck-out ones too: what a job file holds.
    #[must_use]
    pub fn blobs(&self) -> std::collections::BTreeMap<Hash, String> {
        let owners = self.ids(Kind::Photo).chain(self.ids(Kind::Slice)).filter_map(|id| self.item(id));
        let blobs = owners.filter_map(|item| {
            let media_type = item.read(FieldName::MediaType).unwrap_or_else(|| "application/octet-stream".to_owned());
            Some((item.read::<Hash>(FieldName::Blob)?, media_type))
        });
        blobs.collect()
    }
}
