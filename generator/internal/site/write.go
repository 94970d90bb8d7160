package site

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"sutur/generator/internal/bundle"
)

// Write makes the folder out hold files and nothing else. It writes a new
// folder beside it and then changes the two, so that any error leaves out as it
// was. A folder that holds the files already is left alone, and changed is
// false. A folder that is not empty and not a built site is refused.
func Write(out string, files []bundle.File) (changed bool, err error) {
	if real, err := filepath.EvalSymlinks(out); err == nil {
		out = real
	}
	old, err := read(out)
	if err != nil {
		return false, err
	}
	if same(old, files) {
		return false, nil
	}
	if len(old) > 0 && (old["index.html"] == nil || old["sw.js"] == nil) {
		return false, fmt.Errorf("%s holds other things than a built site; an empty or a new folder is accepted", out)
	}
	parent, base := filepath.Split(filepath.Clean(out))
	fresh, err := os.MkdirTemp(parent, "."+base+".new-")
	if err != nil {
		return false, fmt.Errorf("make a folder beside %s: %w", out, err)
	}
	defer os.RemoveAll(fresh)
	if err := os.Chmod(fresh, 0o755); err != nil {
		return false, fmt.Errorf("open the new folder to readers: %w", err)
	}
	for _, f := range files {
		name := filepath.Join(fresh, filepath.FromSlash(f.Name))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return false, fmt.Errorf("make a folder for %s: %w", f.Name, err)
		}
		if err := os.WriteFile(name, f.Data, 0o644); err != nil {
			return false, fmt.Errorf("write %s: %w", f.Name, err)
		}
	}
	return true, swap(fresh, out)
}

// swap puts the folder fresh in place of out, which need not exist.
func swap(fresh, out string) error {
	away := fresh + "-old"
	err := os.Rename(out, away)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("move the old site away: %w", err)
	}
	had := err == nil
	if err := os.Rename(fresh, out); err != nil {
		if had {
			err = errors.Join(err, os.Rename(away, out))
		}
		return fmt.Errorf("move the new site into place: %w", err)
	}
	if err := os.RemoveAll(away); err != nil {
		return fmt.Errorf("remove the old site: %w", err)
	}
	return nil
}

// read returns the files below dir by name; no folder gives no files.
func read(dir string) (map[string][]byte, error) {
	files := map[string][]byte{}
	err := filepath.WalkDir(dir, func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(dir, p)
		if err != nil {
			return err
		}
		data, err := os.ReadFile(p)
		files[filepath.ToSlash(rel)] = data
		return err
	})
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, fmt.Errorf("read %s: %w", dir, err)
	}
	return files, nil
}

func same(old map[string][]byte, files []bundle.File) bool {
	if len(old) != len(files) {
		return false
	}
	for _, f := range files {
		if data, ok := old[f.Name]; !ok || !bytes.Equal(data, f.Data) {
			return false
		}
	}
	return true
}
