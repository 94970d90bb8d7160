package build

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"html"
	"io"
	"net/url"
	"regexp"
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/copies"
	"sutur/generator/internal/site"
)

// oneFile is the one file among those of a site.
func oneFile(t *testing.T, files []bundle.File) []byte {
	t.Helper()
	for _, f := range files {
		if f.Name == site.OneFile {
			return f.Data
		}
	}
	t.Fatalf("the site has no %s", site.OneFile)
	return nil
}

var (
	policyOf  = regexp.MustCompile(`<meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="([^"]*)">`)
	styles    = regexp.MustCompile(`(?s)<style[^>]*>(.*?)</style>`)
	scripts   = regexp.MustCompile(`(?s)<script>(.*?)</script>`)
	heldFiles = regexp.MustCompile(`<script type="application/octet-stream" data-file="([^"]*)" data-sha="([^"]*)">([^<]*)</script>`)
)

// sums names every element's text that re finds as a content policy does.
func sums(re *regexp.Regexp, page []byte) []string {
	var list []string
	for _, m := range re.FindAllSubmatch(page, -1) {
		sum := sha256.Sum256(m[1])
		list = append(list, "'sha256-"+base64.StdEncoding.EncodeToString(sum[:])+"'")
	}
	return list
}

// TestOneFilePolicy: the one file may run its own scripts and use its own styles, each by its digest,
// and may ask nobody for anything.
func TestOneFilePolicy(t *testing.T) {
	page := oneFile(t, realSite(t))
	m := policyOf.FindAllSubmatch(page, -1)
	if len(m) != 1 {
		t.Fatalf("%d policies begin a head", len(m))
	}
	own, looks := sums(scripts, page), sums(styles, page)
	if len(own) != 2 || len(looks) != 5 {
		t.Errorf("%d scripts and %d styles, want 2 and 5", len(own), len(looks))
	}
	want := "default-src 'none'; script-src " + strings.Join(own, " ") + "; style-src " + strings.Join(looks, " ") +
		"; img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types sutur lit-html"
	if got := html.UnescapeString(string(m[0][1])); got != want {
		t.Errorf("the policy is\n%s\nwant\n%s", got, want)
	}
	if bytes.ContainsAny(page, "\r\x00") {
		t.Error("a reader of HTML would change a return or a zero byte, and the digests with it")
	}
}

var (
	outside = regexp.MustCompile(`(?i)\s(?:src|srcset|href|action|poster|data)="([^"#]*)"|url\(\s*["']?([^"')]*)|@import[^;]*`)
	asks    = regexp.MustCompile(`\bfetch\(|XMLHttpRequest|serviceWorker|importScripts|EventSource|WebSocket|sendBeacon|\bimport\(`)
)

// TestOneFileAlone: nothing in the one file refers to a file beside it or asks for one.
func TestOneFileAlone(t *testing.T) {
	page := oneFile(t, realSite(t))
	markup := scripts.ReplaceAll(page, nil)
	for _, m := range outside.FindAllSubmatch(markup, -1) {
		if to := string(m[1]) + string(m[2]); to != "" && !strings.HasPrefix(to, "data:") {
			t.Errorf("%.120s", m[0])
		}
	}
	for _, m := range scripts.FindAllSubmatch(page, -1) {
		for _, found := range asks.FindAllIndex(m[1], -1) {
			t.Errorf("a script asks for something: %.80s", m[1][found[0]:])
		}
	}
}

// held is a file within the one file.
type held struct {
	packed []byte
	text   string
}

// unpack takes out all that the one file holds, by name.
func unpack(t *testing.T, page []byte) map[string]held {
	t.Helper()
	all := map[string]held{}
	for _, m := range heldFiles.FindAllSubmatch(page, -1) {
		name := string(m[1])
		packed, err := base64.StdEncoding.DecodeString(string(m[3]))
		if err != nil {
			t.Fatal(name, err)
		}
		r, err := gzip.NewReader(bytes.NewReader(packed))
		if err != nil {
			t.Fatal(name, err)
		}
		text, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(name, err)
		}
		sum := sha256.Sum256(text)
		if got := base64.StdEncoding.EncodeToString(sum[:]); got != string(m[2]) {
			t.Errorf("%s has the digest %s, and says %s", name, got, m[2])
		}
		all[name] = held{packed, string(text)}
	}
	return all
}

// leads tells whether a link of a page leads to a screen, or to a page, and to the place in it, that
// the one file holds.
func leads(to string, all map[string]held) bool {
	where, query, _ := strings.Cut(to, "?")
	if where != "#/read" {
		return where == "#/today" || where == "#/lines"
	}
	q, err := url.ParseQuery(query)
	page, there := all[q.Get("page")]
	at := q.Get("at")
	if err != nil || !there || at == "" {
		return err == nil && there
	}
	return strings.Contains(page.text, `id="`+at+`"`)
}

var address = regexp.MustCompile(`href="([^"]*)"`)

// TestOneFileHolds reads what the one file holds: every data file of the site as it is, the pages and
// licences, each with the digest that the browser will look for; and that every link in a page leads
// to a place that is there.
func TestOneFileHolds(t *testing.T) {
	files := realSite(t)
	all := unpack(t, oneFile(t, files))
	n := map[string]int{}
	for _, f := range files {
		kind, _, _ := strings.Cut(f.Name, "/")
		h, there := all[f.Name]
		switch {
		case kind == "data" && !bytes.Equal(h.packed, f.Data):
			t.Errorf("%s is not held as it is", f.Name)
		case (kind == "lessons" || kind == "licences" || kind == "about.html") && !there:
			t.Errorf("%s is not held", f.Name)
		}
		n[kind]++
	}
	if n["data"] != 116 || n["lessons"] < 40 || n["licences"] < 5 {
		t.Errorf("only %v", n)
	}
	links := 0
	for name, h := range all {
		if strings.HasPrefix(name, "data/") {
			continue
		}
		for _, m := range address.FindAllStringSubmatch(h.text, -1) {
			links++
			if to := html.UnescapeString(m[1]); !leads(to, all) {
				t.Errorf("%s links to %s", name, to)
			}
		}
	}
	if links < 300 {
		t.Errorf("only %d links were followed", links)
	}
}

// TestOneFileApart: the worker keeps the one file for nobody; who copies the site can check it, and
// the page about Sutur offers it with its size.
func TestOneFileApart(t *testing.T) {
	files := realSite(t)
	size := fmt.Sprintf("%.1f MB", float64(len(oneFile(t, files)))/1e6)
	listed, offered := false, false
	for _, f := range files {
		named := bytes.Contains(f.Data, []byte(site.OneFile))
		switch {
		case f.Name == copies.ListName:
			listed = named
		case f.Name == "about.html":
			offered = bytes.Contains(f.Data, []byte(`href="`+site.OneFile+`"`)) && bytes.Contains(f.Data, []byte(size))
		case named:
			t.Errorf("%s names the one file", f.Name)
		}
	}
	if !listed || !offered {
		t.Errorf("listed: %t, offered with %s: %t", listed, size, offered)
	}
}
