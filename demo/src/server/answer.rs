//! One request, one file. Never another page in place of a missing file: a
//! script or a wasm file that is gone must look gone.

use std::fs::{self, File};
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};

use super::Site;

/// `frame-ancestors` is ignored in a page's own policy, so it is said here.
const ALWAYS: [(&str, &str); 4] = [
    ("Content-Security-Policy", "frame-ancestors 'none'"),
    ("X-Content-Type-Options", "nosniff"),
    ("Referrer-Policy", "no-referrer"),
    ("Cross-Origin-Opener-Policy", "same-origin"),
];

/// A request's head is longer than this only by mistake.
const LONGEST_HEAD: u64 = 65_536;

/// Answers the one request of a connection.
pub(super) fn answer(site: &Site, stream: &TcpStream) -> io::Result<()> {
    let (method, url) = asked(stream)?;
    let path = if matches!(&*method, "GET" | "HEAD") { locate(site, &url) } else { None };
    match path.and_then(|path| File::open(&path).ok().map(|file| (path, file))) {
        Some((path, mut file)) => {
            let length = file.metadata()?.len();
            let body: &mut dyn Read = if method == "HEAD" { &mut io::empty() } else { &mut file };
            respond(stream, "200 OK", &path, length, body)
        }
        None => respond(stream, "404 Not Found", Path::new("missing.txt"), MISSING.len() as u64, &mut &*MISSING),
    }
}

const MISSING: &[u8] = b"Not here.\n";

/// Reads a request's head to its end: the method and what is asked for.
fn asked(stream: &TcpStream) -> io::Result<(String, String)> {
    let mut head = BufReader::new(stream.take(LONGEST_HEAD));
    let mut first = String::new();
    head.read_line(&mut first)?;
    let mut line = String::new();
    while head.read_line(&mut line)? > 0 && !line.trim_end().is_empty() {
        line.clear();
    }
    let mut words = first.split_whitespace().map(str::to_owned);
    Ok((words.next().unwrap_or_default(), words.next().unwrap_or_default()))
}

fn respond(
    mut stream: &TcpStream,
    status: &str,
    path: &Path,
    length: u64,
    body: &mut (impl Read + ?Sized),
) -> io::Result<()> {
    let mut head = format!("HTTP/1.1 {status}\r\nContent-Length: {length}\r\nConnection: close\r\n");
    for (name, value) in
        ALWAYS.into_iter().chain([("Content-Type", media_type(path)), ("Cache-Control", keeping(path))])
    {
        head += &format!("{name}: {value}\r\n");
    }
    stream.write_all(format!("{head}\r\n").as_bytes())?;
    io::copy(body, &mut stream).map(drop)
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
        "zip" => "application/zip",
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
