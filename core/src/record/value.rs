use super::codec::{Reader, Unreadable, Writer};
use super::{Hash, Id};

/// A value as it is stored. What this version cannot read is kept as it came.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Value {
    /// Emptied by somebody.
    Cleared,
    /// Yes or no.
    Flag(bool),
    /// A whole number.
    Whole(i64),
    /// The bits of a float, so that values have one order everywhere.
    Real(u64),
    /// Words.
    Text(String),
    /// Another record.
    Ref(Id),
    /// A photo or sound, by its hash.
    Blob(Hash),
    /// Minor units and the three letters of a currency.
    Money(i64, [u8; 3]),
    /// A kind of value from a later version: its mark and its bytes.
    Unknown(u8, Vec<u8>),
}

const CLEARED: u8 = 0;
const FLAG: u8 = 1;
const WHOLE: u8 = 2;
const REAL: u8 = 3;
const TEXT: u8 = 4;
const REF: u8 = 5;
const BLOB: u8 = 6;
const MONEY: u8 = 7;

impl Value {
    /// Mark, length, bytes.
    pub(super) fn write(&self, out: &mut Writer) {
        let mut body = Writer::default();
        let mark = self.write_body(&mut body);
        out.byte(mark);
        out.run(&body.into_bytes());
    }

    fn write_body(&self, body: &mut Writer) -> u8 {
        match self {
            Self::Cleared => CLEARED,
            Self::Flag(flag) => {
                body.byte(u8::from(*flag));
                FLAG
            }
            Self::Whole(number) => {
                body.signed(*number);
                WHOLE
            }
            Self::Real(bits) => {
                body.bytes(&bits.to_le_bytes());
                REAL
            }
            Self::Text(text) => {
                body.bytes(text.as_bytes());
                TEXT
            }
            Self::Ref(id) => {
                body.bytes(id.bytes());
                REF
            }
            Self::Blob(hash) => {
                body.bytes(hash.bytes());
                BLOB
            }
            Self::Money(minor, currency) => {
                body.bytes(currency);
                body.signed(*minor);
                MONEY
            }
            Self::Unknown(mark, bytes) => {
                body.bytes(bytes);
                *mark
            }
        }
    }

    /// Reads what [`write`](Self::write) wrote; a body that does not fit its mark is kept as unknown.
    pub(super) fn read(from: &mut Reader<'_>) -> Result<Self, Unreadable> {
        let mark = from.byte()?;
        let body = from.run()?;
        Ok(Self::read_body(mark, body).unwrap_or_else(|| Self::Unknown(mark, body.to_vec())))
    }

    fn read_body(mark: u8, body: &[u8]) -> Option<Self> {
        let mut reader = Reader::new(body);
        let value = match mark {
            CLEARED => Self::Cleared,
            FLAG => match reader.byte().ok()? {
                0 => Self::Flag(false),
                1 => Self::Flag(true),
                _ => return None,
            },
            WHOLE => Self::Whole(reader.signed().ok()?),
            REAL => Self::Real(u64::from_le_bytes(reader.array().ok()?)),
            TEXT => Self::Text(std::str::from_utf8(reader.rest()).ok()?.to_owned()),
            REF => Self::Ref(Id::from_bytes(reader.array().ok()?)),
            BLOB => Self::Blob(Hash::from_bytes(reader.array().ok()?)),
            MONEY => {
                let currency = reader.array().ok()?;
                Self::Money(reader.signed().ok()?, currency)
            }
            _ => return None,
        };
        // One value has one form: an overlong number would come back shorter than it came.
        let mut again = Writer::default();
        (reader.is_empty() && value.write_body(&mut again) == mark && again.into_bytes() == body).then_some(value)
    }
}
