//! One request, one file. Never another page in place of a missing file: a
//! script or a wasm file that is gone must look gone.

use std::fs::{self, File};
use std::io::Cursor;
use std::path::{Path, PathBuf};

use tiny_http::{Header, Method, Request, Response, StatusCode};

use super::Site;

/// `frame-ancestors` is ignored in a page's own policy, so it is said here.
const ALWAYS: [(&str, &str); 4] = [
    ("Content-Security-Policy", "frame-ancestors 'none'"),
    ("X-Content-Type-Options", "nosniff"),
    ("Referrer-Policy", "no-referrer"),
    ("Cross-Origin-Opener-Policy", "same-origin"),
];

pub(super) fn answer(site: &Site, request: Request) {
    let reading = matches!(request.method(), Method::Get | Method::Head);
    let found = locate(site, request.url()).filter(|_| reading);
    let file = found.as_ref().and_then(|path| File::open(path).ok());
    // A browser that has gone away is its own affair.
    let _ = match (found, file) {
        (Some(path), Some(file)) => request.respond(with_headers(Response::from_file(file), &path)),
        _ => request.respond(missing()),
    };
}

fn missing() -> Response<Cursor<Vec<u8>>> {
    let body = b"Not here.\n".to_vec();
    let response = Response::from_data(body).with_status_code(StatusCode(404));
    with_headers(response, Path::new("missing.txt"))
}

/// The file a request means, if it lies inside the site.
fn locate(site: &Site, url: &str) -> Option<PathBuf> {
    let path = url.split(['?', '#']).next()?;
    let inside = path.strip_prefix(&site.under)?;
    let plain = |part: &str| !part.is_empty() && !part.starts_with('.') && !part.contains(['\\', '%', ':']);
    if !inside.is_empty() && !inside.trim_end_matches('/').split('/').all(plain) {
        return None;
    }
    let mut file = site.folder.join(inside);
    if inside.is_empty() || inside.ends_with('/') {
        file.push("index.html");
    }
    fs::metadata(&file).is_ok_and(|meta| meta.is_file()).then_some(file)
}

fn with_headers<R: std::io::Read>(mut response: Response<R>, path: &Path) -> Response<R> {
    let own = [("Content-Type", media_type(path)), ("Cache-Control", keeping(path))];
    for (name, value) in ALWAYS.into_iter().chain(own) {
        let header = Header::from_bytes(name, value).expect("header names and values here are plain ASCII");
        response.add_header(header);
    }
    response
}

fn media_type(path: &Path) -> &'static str {
    match path.extension().and_then(|e| e.to_str()).unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" => "image/jpeg",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// Files in `assets` carry the hash of their content in their name.
fn keeping(path: &Path) -> &'static str {
    let hashed = path.parent().is_some_and(|folder| folder.ends_with("assets"));
    if hashed { "public, max-age=31536000, immutable" } else { "no-cache" }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn site() -> (tempfile::TempDir, Site) {
        let folder = tempfile::tempdir().unwrap();
        fs::create_dir(folder.path().join("assets")).unwrap();
        fs::write(folder.path().join("index.html"), "page").unwrap();
        fs::write(folder.path().join("assets/a.wasm"), "wasm").unwrap();
        let site = Site { folder: folder.path().to_owned(), under: "/deep/er/".into(), port: 0 };
        (folder, site)
    }

    #[test]
    fn finds_files_below_its_path() {
        let (_folder, site) = site();
        assert!(locate(&site, "/deep/er/").unwrap().ends_with("index.html"));
        assert!(locate(&site, "/deep/er/?a=b").unwrap().ends_with("index.html"));
        assert!(locate(&site, "/deep/er/assets/a.wasm").unwrap().ends_with("a.wasm"));
    }

    #[test]
    fn answers_nothing_in_place_of_a_missing_file() {
        let (_folder, site) = site();
        for url in ["/", "/deep/", "/deep/er/assets/gone.wasm", "/deep/er/assets/", "/deep/er/parts"] {
            assert_eq!(locate(&site, url), None, "{url}");
        }
    }

    #[test]
    fn stays_inside_its_folder() {
        let (_folder, site) = site();
        for url in ["/deep/er/../x", "/deep/er/%2e%2e/x", "/deep/er//etc/passwd", "/deep/er/assets/../index.html"] {
            assert_eq!(locate(&site, url), None, "{url}");
        }
    }

    #[test]
    fn says_what_a_file_is() {
        assert_eq!(media_type(Path::new("a.wasm")), "application/wasm");
        assert_eq!(keeping(Path::new("/x/assets/a-12345678.js")), "public, max-age=31536000, immutable");
        assert_eq!(keeping(Path::new("/x/sw.js")), "no-cache");
    }
}
