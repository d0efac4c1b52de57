//! Bytes in and out: little-endian base-128 numbers, lengths before runs. Frozen with the first chunk.

/// Bytes that are not what they should be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unreadable {
    /// They end too early.
    Short,
    /// A number is longer than 64 bits.
    Long,
    /// Bytes are left over.
    Rest,
    /// Words that are no UTF-8, or marks of no known form.
    Form(u16),
}

#[derive(Default)]
pub(super) struct Writer {
    bytes: Vec<u8>,
}

impl Writer {
    pub(super) fn byte(&mut self, byte: u8) {
        self.bytes.push(byte);
    }

    pub(super) fn bytes(&mut self, bytes: &[u8]) {
        self.bytes.extend_from_slice(bytes);
    }

    #[expect(clippy::cast_possible_truncation, reason = "seven bits are kept on purpose")]
    pub(super) fn number(&mut self, mut number: u64) {
        while number >= 0x80 {
            self.byte(number as u8 | 0x80);
            number >>= 7;
        }
        self.byte(number as u8);
    }

    /// Zig-zag, so that small negative numbers stay short.
    #[expect(clippy::cast_sign_loss, reason = "the bits are meant")]
    pub(super) fn signed(&mut self, number: i64) {
        self.number(((number << 1) ^ (number >> 63)) as u64);
    }

    /// A length and so many bytes.
    pub(super) fn run(&mut self, bytes: &[u8]) {
        self.number(bytes.len() as u64);
        self.bytes(bytes);
    }

    pub(super) fn into_bytes(self) -> Vec<u8> {
        self.bytes
    }
}

pub(super) struct Reader<'a> {
    bytes: &'a [u8],
}

impl<'a> Reader<'a> {
    pub(super) const fn new(bytes: &'a [u8]) -> Self {
        Self { bytes }
    }

    pub(super) const fn is_empty(&self) -> bool {
        self.bytes.is_empty()
    }

    pub(super) fn rest(&mut self) -> &'a [u8] {
        std::mem::take(&mut self.bytes)
    }

    pub(super) fn take(&mut self, length: usize) -> Result<&'a [u8], Unreadable> {
        let (taken, rest) = self.bytes.split_at_checked(length).ok_or(Unreadable::Short)?;
        self.bytes = rest;
        Ok(taken)
    }

    pub(super) fn byte(&mut self) -> Result<u8, Unreadable> {
        Ok(self.take(1)?[0])
    }

    pub(super) fn array<const N: usize>(&mut self) -> Result<[u8; N], Unreadable> {
        self.take(N)?.try_into().map_err(|_| Unreadable::Short)
    }

    pub(super) fn number(&mut self) -> Result<u64, Unreadable> {
        let mut number = 0_u64;
        for shift in (0..64).step_by(7) {
            let byte = self.byte()?;
            let bits = u64::from(byte & 0x7f);
            if shift == 63 && bits > 1 {
                return Err(Unreadable::Long);
            }
            number |= bits << shift;
            if byte & 0x80 == 0 {
                return Ok(number);
            }
        }
        Err(Unreadable::Long)
    }

    #[expect(clippy::cast_possible_wrap, reason = "the bits are meant")]
    pub(super) fn signed(&mut self) -> Result<i64, Unreadable> {
        let number = self.number()?;
        Ok((number >> 1) as i64 ^ -((number & 1) as i64))
    }

    pub(super) fn run(&mut self) -> Result<&'a [u8], Unreadable> {
        let length = self.number()?;
        self.take(usize::try_from(length).map_err(|_| Unreadable::Short)?)
    }
}
