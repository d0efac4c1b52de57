//! The suite of the store, over memory.
#![cfg(not(target_arch = "wasm32"))]

mod suite;

use std::future::Future;
use std::pin::pin;
use std::task::{Context, Poll, Waker};

use asfound_web::store::Memory;

/// Memory never waits for anything.
fn at_once<T>(future: impl Future<Output = T>) -> T {
    match pin!(future).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(value) => value,
        Poll::Pending => panic!("memory waited"),
    }
}

#[test]
fn memory_passes_the_suite() {
    at_once(suite::passes(&Memory::default(), 7));
}
