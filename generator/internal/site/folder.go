package site

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

// folder is what lies below a path, by slash-separated names. Own are the regular files that Write
// wrote, with the list of them; foreign is everything else that is no folder, and folders that hold
// nothing.
type folder struct {
	path    string
	own     map[string]bool
	foreign map[string]bool
	listed  bool // there is a list
}

// look returns what is in dir, which need not exist. It reads names, and the list alone.
func look(dir string) (folder, error) {
	f := folder{path: dir, own: map[string]bool{}, foreign: map[string]bool{}}
	names, listed, err := written(dir)
	if err != nil {
		return f, err
	}
	f.listed = listed
	err = filepath.WalkDir(dir, func(p string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(dir, p)
		if err != nil || rel == "." {
			return err
		}
		name := filepath.ToSlash(rel)
		switch {
		case d.Type().IsRegular() && names[name]:
			f.own[name] = true
		case !d.IsDir():
			f.foreign[name] = true
		default:
			if e, err := os.ReadDir(p); err != nil || len(e) == 0 {
				f.foreign[name] = true
			}
		}
		return nil
	})
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return f, fmt.Errorf("look into %s: %w", dir, err)
	}
	return f, nil
}

// written returns the names that Write wrote into dir, with the list's own.
func written(dir string) (names map[string]bool, listed bool, err error) {
	names = map[string]bool{}
	data, err := regular(filepath.Join(dir, ListName))
	if errors.Is(err, fs.ErrNotExist) {
		return earlier(dir), false, nil
	}
	if err != nil {
		return nil, false, err
	}
	for name := range strings.Lines(string(data)) {
		if name = strings.TrimSuffix(name, "\n"); fs.ValidPath(name) && name != "." {
			names[name] = true
		}
	}
	names[ListName] = true
	return names, true, nil
}

// earlier returns the names that a site had which was written before there were lists: its service
// worker holds all of them.
func earlier(dir string) map[string]bool {
	names := map[string]bool{}
	worker, err := regular(filepath.Join(dir, "sw.js"))
	m := regexp.MustCompile(`\{version:"[0-9a-f]{16}",files:(\[[^\]]*\])\}`).FindSubmatch(worker)
	var list []string
	if err != nil || m == nil || json.Unmarshal(m[1], &list) != nil {
		return names
	}
	for _, n := range append(list, "sw.js") {
		names[n] = fs.ValidPath(n)
	}
	return names
}

// largest is more than a list or a service worker takes, in bytes.
const largest = 1 << 20

// regular reads a small regular file, and no link or pipe.
func regular(name string) ([]byte, error) {
	i, err := os.Lstat(name)
	if err == nil && (!i.Mode().IsRegular() || i.Size() > largest) {
		err = errors.New("it is no list that this program wrote")
	}
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", name, err)
	}
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", name, err)
	}
	return data, nil
}
