package bench

import (
	"bytes"
	"context"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"time"

	"sutur/generator/internal/site"
)

// patience with the general generator's installation: the first time it compiles for minutes.
const patience = 20 * time.Minute

// general installs the general generator and writes Markdown for so many pages, of the sizes of the
// lessons' sources. It returns the program and the folder to build.
func (r *run) general(pages int) (program, dir string, err error) {
	bin := filepath.Join(r.temp, "bin")
	ctx, cancel := context.WithTimeout(r.ctx, patience)
	defer cancel()
	r.say("  installing %s (minutes, the first time)", generalModule)
	c := exec.CommandContext(ctx, goTool(), "install", generalModule+"@"+generalVersion)
	c.Dir = r.temp
	c.Env = append(os.Environ(), "GOBIN="+bin, "CGO_ENABLED=0", "GOTOOLCHAIN=local", "GOFLAGS=")
	if out, err := c.CombinedOutput(); err != nil {
		return "", "", fmt.Errorf("go install: %w: %s", err, complaint(string(out)))
	}
	dir = filepath.Join(r.temp, "general")
	if err := writePages(dir, filepath.Join(r.root, "rules-content", "lessons"), pages); err != nil {
		return "", "", err
	}
	return filepath.Join(bin, "hugo"+exe()), dir, nil
}

// writePages writes a project of the general generator: its settings, the smallest template, and
// pages of plain Markdown as long as the sources of the lessons, one after the other and from the
// first again.
func writePages(dir, lessons string, pages int) error {
	var sizes []int
	err := walkFiles(os.DirFS(lessons), func(name string, size int) {
		if strings.HasSuffix(name, ".md") {
			sizes = append(sizes, size)
		}
	})
	if err != nil {
		return err
	}
	if len(sizes) == 0 {
		return fmt.Errorf("no lesson in %s", lessons)
	}
	const page = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{{ .Title }}</title></head><body><main>{{ .Content }}</main></body></html>`
	files := map[string]string{
		"hugo.toml":                    "baseURL = 'https://example.org/'\ntitle = 'Pages'\ndisableKinds = ['taxonomy', 'term', 'RSS', 'sitemap', '404']\n",
		"layouts/_default/single.html": page,
		"layouts/_default/list.html":   page,
		"content/_index.md":            string(markdown(0, sizes[0])),
	}
	for i := 1; i < pages; i++ {
		files[fmt.Sprintf("content/page-%d.md", i)] = string(markdown(i, sizes[i%len(sizes)]))
	}
	for name, text := range files {
		file := filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			return err
		}
	}
	return nil
}

// markdown is a page of so many bytes: headings, paragraphs with emphasis, lists.
func markdown(n, size int) []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "---\ntitle: Page %d\n---\n", n)
	for part := 1; b.Len() < size; part++ {
		fmt.Fprintf(&b, "\n## Part %d\n\nA paragraph of *plain* words, which says **nothing** and is long enough to be broken into\nlines, as those of the lessons are.\n\n- One thing\n- Another [thing](#part-%d)\n", part, part)
	}
	return b.Bytes()[:max(size, 24)]
}

// clock runs a program and returns the milliseconds it took.
func (r *run) clock(program string, args ...string) (float64, error) {
	start := time.Now()
	_, err := r.command(".", program, args...)
	return float64(time.Since(start).Microseconds()) / 1000, err
}

// pagesIn counts the pages of a built folder, without the edition in one file.
func pagesIn(dir string) (n int, err error) {
	err = walkFiles(os.DirFS(dir), func(name string, _ int) {
		if strings.HasSuffix(name, ".html") && name != site.OneFile {
			n++
		}
	})
	return n, err
}

// walkFiles calls f with the name and the size in bytes of every file.
func walkFiles(dir fs.FS, f func(name string, size int)) error {
	return fs.WalkDir(dir, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err == nil {
			f(name, int(info.Size()))
		}
		return err
	})
}

// exe is what the system has programs end in.
func exe() string {
	if runtime.GOOS == "windows" {
		return ".exe"
	}
	return ""
}
