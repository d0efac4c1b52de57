//! The wasm test runner as a crate of the workspace: the same release as the
//! bindings, with nothing to install beforehand.

fn main() -> anyhow::Result<()> {
    wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(std::env::args_os())
}
