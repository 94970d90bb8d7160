package copies

import (
	"context"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net/http"
	"net/url"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"time"
)

// Problem is a file of a copy that is not what the build made.
type Problem struct {
	Name  string
	Found string // in words, such as "is missing"
}

func (p Problem) String() string { return p.Name + " " + p.Found }

// Source is where a copy lies. Open gives what a file holds; fs.ErrNotExist where there is none.
type Source interface {
	Open(ctx context.Context, name string) (io.ReadCloser, error)
}

// largest is how much is read of a file, in bytes; no file of a site is nearly as large.
const largest = 64 << 20

// atOnce is how many files are read at a time.
const atOnce = 8

// Check compares every listed file, and returns those that differ, sorted by name. An error says
// that the copy could not be read at all, or that ctx is done.
func Check(ctx context.Context, list []Listed, from Source) ([]Problem, error) {
	found := make([]string, len(list))
	errs := make([]error, len(list))
	var wg sync.WaitGroup
	slots := make(chan struct{}, atOnce)
	for i, f := range list {
		wg.Go(func() {
			slots <- struct{}{}
			defer func() { <-slots }()
			found[i], errs[i] = compare(ctx, f, from)
		})
	}
	wg.Wait()
	if err := ctx.Err(); err != nil {
		return nil, fmt.Errorf("stopped: %w", err)
	}
	var problems []Problem
	failed := 0
	for i, f := range list {
		switch {
		case errs[i] != nil:
			failed++
			problems = append(problems, Problem{f.Name, "cannot be read: " + errs[i].Error()})
		case found[i] != "":
			problems = append(problems, Problem{f.Name, found[i]})
		}
	}
	if failed == len(list) {
		return nil, fmt.Errorf("no file of the copy can be read; the first says: %w", errs[0])
	}
	return problems, nil
}

func compare(ctx context.Context, f Listed, from Source) (string, error) {
	if err := ctx.Err(); err != nil {
		return "", err
	}
	r, err := from.Open(ctx, f.Name)
	if errors.Is(err, fs.ErrNotExist) {
		return "is missing", nil
	}
	if err != nil {
		return "", err
	}
	defer r.Close()
	h := sha256.New()
	n, err := io.Copy(h, io.LimitReader(r, largest))
	if err != nil {
		return "", err
	}
	if [sha256.Size]byte(h.Sum(nil)) == f.SHA {
		return "", nil
	}
	return fmt.Sprintf("differs: %d bytes with the SHA-256 %x, expected is %x", n, h.Sum(nil), f.SHA), nil
}

// Folder is a copy on this machine.
type Folder string

// Open opens a regular file; no link that leads out of the folder is followed.
func (dir Folder) Open(_ context.Context, name string) (io.ReadCloser, error) {
	root, err := os.OpenRoot(string(dir))
	if err != nil {
		return nil, errors.New(err.Error()) // the folder is missing, not the file
	}
	defer root.Close()
	f, err := root.Open(filepath.FromSlash(name))
	if err != nil {
		return nil, err
	}
	return f, nil
}

// Extra returns the files of the folder that are in no list, sorted: what a host would serve beside
// the site. Names that begin with a dot, as those of version control, are passed over, and so is the
// list itself.
func (dir Folder) Extra(list []Listed) ([]string, error) {
	known := map[string]bool{ListName: true}
	for _, f := range list {
		known[f.Name] = true
	}
	var extra []string
	err := fs.WalkDir(os.DirFS(string(dir)), ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if name != "." && strings.HasPrefix(path.Base(name), ".") {
			if d.IsDir() {
				return fs.SkipDir
			}
			return nil
		}
		if !d.IsDir() && !known[name] {
			extra = append(extra, name)
		}
		return nil
	})
	slices.Sort(extra)
	return extra, err
}

// Host is a copy on a web server, below an address.
type Host struct {
	base   *url.URL
	client *http.Client
}

// patience is how long a host may take for one file.
const patience = time.Minute

// NewHost returns the copy at an address of http or https. Its query and fragment are left out, and
// so is a file name such as index.html at its end.
func NewHost(address string) (*Host, error) {
	u, err := url.Parse(address)
	if err != nil || u.Host == "" || u.Scheme != "http" && u.Scheme != "https" {
		return nil, fmt.Errorf("%q is no address; expected is http:// or https:// and a host, or a folder", address)
	}
	u.RawQuery, u.Fragment, u.User = "", "", nil
	if last := path.Base(u.Path); path.Ext(last) == ".html" {
		u.Path = strings.TrimSuffix(u.Path, last)
	}
	if !strings.HasSuffix(u.Path, "/") {
		u.Path += "/"
	}
	// The bytes as they lie there: a host may compress on the way only what was asked to be.
	t := http.DefaultTransport.(*http.Transport).Clone()
	t.DisableCompression = true
	return &Host{u, &http.Client{Transport: t, Timeout: patience}}, nil
}

// Open asks the host for a file. A redirection is followed, as a browser does: hosts strip .html or
// index.html.
func (h *Host) Open(ctx context.Context, name string) (io.ReadCloser, error) {
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, h.base.JoinPath(name).String(), nil)
	if err != nil {
		return nil, err
	}
	req.Header.Set("Accept-Encoding", "identity")
	req.Header.Set("Cache-Control", "no-cache")
	res, err := h.client.Do(req)
	if err != nil {
		return nil, err
	}
	switch res.StatusCode {
	case http.StatusOK:
		return res.Body, nil
	case http.StatusNotFound, http.StatusGone:
		res.Body.Close()
		return nil, fs.ErrNotExist
	}
	res.Body.Close()
	return nil, fmt.Errorf("the host says %s", res.Status)
}
