use super::codec::{Reader, Unreadable, Writer};
use super::{EntryId, FieldId, Id, Replica, Value};
use crate::quantity::Millis;

/// One thing that was said, at once and as a whole.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Entry {
    /// Its identity.
    pub id: EntryId,
    /// When, by the clock of the device: for display only.
    pub at: Millis,
    /// What it writes.
    pub ops: Vec<Op>,
}

/// One field of one record gets one value.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Op {
    /// Which record.
    pub record: Id,
    /// Which field; ids of later versions pass through.
    pub field: FieldId,
    /// Its new value.
    pub value: Value,
    /// The entries whose values the user saw when overwriting.
    pub over: Vec<EntryId>,
}

impl Entry {
    /// Its bytes, as kept in the tail and in chunks.
    ///
    /// ```
    /// use asfound_core::quantity::Millis;
    /// use asfound_core::record::{Entry, EntryId, Replica};
    /// let id = EntryId { replica: Replica::from_bytes([7; 8]), seq: 1 };
    /// let entry = Entry { id, at: Millis(1), ops: vec![] };
    /// assert_eq!(Entry::from_bytes(&entry.to_bytes()), Ok(entry));
    /// ```
    #[must_use]
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut out = Writer::default();
        out.bytes(self.id.replica.bytes());
        out.number(self.id.seq);
        out.signed(self.at.0);
        out.number(self.ops.len() as u64);
        for op in &self.ops {
            op.write(&mut out);
        }
        out.into_bytes()
    }

    /// Reads its bytes.
    ///
    /// # Errors
    /// When the bytes end too early, hold a number beyond 64 bits, or go on after the last op.
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, Unreadable> {
        let mut from = Reader::new(bytes);
        let replica = Replica::from_bytes(from.array()?);
        let id = EntryId { replica, seq: from.number()? };
        let at = Millis(from.signed()?);
        let count = from.number()?;
        let ops = (0..count).map(|_| Op::read(&mut from)).collect::<Result<_, _>>()?;
        if from.is_empty() { Ok(Self { id, at, ops }) } else { Err(Unreadable::Rest) }
    }
}

impl Op {
    fn write(&self, out: &mut Writer) {
        out.bytes(self.record.bytes());
        out.number(u64::from(self.field.0));
        self.value.write(out);
        out.number(self.over.len() as u64);
        for id in &self.over {
            out.bytes(id.replica.bytes());
            out.number(id.seq);
        }
    }

    fn read(from: &mut Reader<'_>) -> Result<Self, Unreadable> {
        let record = Id::from_bytes(from.array()?);
        let field = FieldId(u16::try_from(from.number()?).map_err(|_| Unreadable::Long)?);
        let value = Value::read(from)?;
        let count = from.number()?;
        let over = (0..count)
            .map(|_| Ok(EntryId { replica: Replica::from_bytes(from.array()?), seq: from.number()? }))
            .collect::<Result<_, Unreadable>>()?;
        Ok(Self { record, field, value, over })
    }
}
