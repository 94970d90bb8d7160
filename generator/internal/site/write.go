package site

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"sutur/generator/internal/bundle"
)

// ListName is the file in which Write leaves the names of all that it wrote, one a line. It removes
// these and nothing else.
const ListName = ".sutur-files"

// Write makes the folder out hold files, and ListName. It writes a new folder beside it and then
// exchanges the two, so that any error, and any moment at which it is stopped, leaves the old site
// or the new one. A folder that holds the files already is left alone, and changed is false.
//
// A folder that is not empty and was not made by Write is refused. What others have put into one
// that was stays in it; where such a thing has the name of a file of the site, Write refuses. No
// link below out is followed, and nothing is opened but regular files that Write wrote.
func Write(out string, files []bundle.File) (changed bool, err error) {
	if out, err = real(out); err != nil {
		return false, err
	}
	if err := sweep(out); err != nil {
		return false, err
	}
	old, err := look(out)
	if err != nil {
		return false, err
	}
	if err := old.accepts(files); err != nil {
		return false, err
	}
	if old.listed && same(old, files) {
		return false, nil
	}
	fresh, err := stage(out, files)
	if err != nil {
		return false, err
	}
	return true, swap(fresh, old)
}

// real returns the absolute path of out, which may be a link to a folder.
func real(out string) (string, error) {
	abs, err := filepath.Abs(out)
	if err != nil {
		return "", fmt.Errorf("find %s: %w", out, err)
	}
	if r, err := filepath.EvalSymlinks(abs); err == nil {
		abs = r
	}
	if i, err := os.Stat(abs); err == nil && !i.IsDir() {
		return "", fmt.Errorf("%s is no folder; an empty or a new folder is accepted", out)
	}
	return abs, nil
}

// accepts reports why files cannot be written into the folder.
func (o folder) accepts(files []bundle.File) error {
	if len(o.foreign) > 0 && len(o.own) == 0 {
		return fmt.Errorf("%s holds other things than a built site; an empty or a new folder is accepted, or one that this program made", o.path)
	}
	taken := map[string]bool{}
	for name := range o.foreign {
		taken[name] = true
	}
	for _, f := range files {
		for name := f.Name; name != "."; name = filepath.ToSlash(filepath.Dir(name)) {
			if taken[name] {
				return fmt.Errorf("%s is no file that this program wrote, and the site has one of that name; move it away", filepath.Join(o.path, name))
			}
		}
		for name := range o.foreign {
			if strings.HasPrefix(name, f.Name+"/") {
				return fmt.Errorf("%s stands where the site has the file %s; move it away", filepath.Join(o.path, name), f.Name)
			}
		}
	}
	return nil
}

// stage writes files into a new folder beside out. The list comes first, so that a later run can
// remove what one that was stopped left.
func stage(out string, files []bundle.File) (string, error) {
	parent, base := filepath.Split(out)
	fresh, err := os.MkdirTemp(parent, fmt.Sprintf("%s%d-", stagePrefix(base), os.Getpid()))
	if err != nil {
		return "", fmt.Errorf("make a folder beside %s: %w", out, err)
	}
	err = fill(fresh, files)
	if err != nil {
		return "", errors.Join(err, os.RemoveAll(fresh))
	}
	return fresh, nil
}

func fill(dir string, files []bundle.File) error {
	if err := os.Chmod(dir, 0o755); err != nil {
		return fmt.Errorf("open the new folder to readers: %w", err)
	}
	var list strings.Builder
	for _, f := range files {
		list.WriteString(f.Name + "\n")
	}
	for _, f := range append([]bundle.File{{Name: ListName, Data: []byte(list.String())}}, files...) {
		name := filepath.Join(dir, filepath.FromSlash(f.Name))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return fmt.Errorf("make a folder for %s: %w", f.Name, err)
		}
		if err := os.WriteFile(name, f.Data, 0o644); err != nil {
			return fmt.Errorf("write %s: %w", f.Name, err)
		}
	}
	return nil
}

// swap puts the folder fresh in place of old, which need not exist, brings back what others have
// put there, and removes the rest of it.
func swap(fresh string, old folder) error {
	err := exchange(fresh, old.path)
	if errors.Is(err, fs.ErrNotExist) {
		err = os.Rename(fresh, old.path)
		if err != nil {
			err = errors.Join(err, os.RemoveAll(fresh))
			return fmt.Errorf("move the new site into place: %w", err)
		}
		return nil
	}
	if errors.Is(err, errors.ErrUnsupported) {
		fresh, err = inTurn(fresh, old.path)
	}
	if err != nil {
		return fmt.Errorf("move the new site into place: %w", errors.Join(err, os.RemoveAll(fresh)))
	}
	return clear(fresh, old.own, old.path)
}

// inTurn is exchange for systems that have no such call: between its two steps there is no folder
// out, and the next run begins by bringing one back.
func inTurn(fresh, out string) (away string, err error) {
	away = fresh + "-old"
	if err := os.Rename(out, away); err != nil {
		return fresh, err
	}
	if err := os.Rename(fresh, out); err != nil {
		return fresh, errors.Join(err, os.Rename(away, out))
	}
	return away, nil
}

func same(old folder, files []bundle.File) bool {
	if len(old.own) != len(files)+1 {
		return false
	}
	for _, f := range files {
		if !old.own[f.Name] {
			return false
		}
		data, err := os.ReadFile(filepath.Join(old.path, filepath.FromSlash(f.Name)))
		if err != nil || !bytes.Equal(data, f.Data) {
			return false
		}
	}
	return true
}
