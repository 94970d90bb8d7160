package site

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"syscall"
)

// stagePrefix begins the names of the folders that stage makes beside a folder named base; the
// number of the process follows.
func stagePrefix(base string) string { return "." + base + ".new-p" }

// clear removes a folder that held a site: the files named own are removed, and what others have
// put there is moved to the same place below out.
func clear(dir string, own map[string]bool, out string) error {
	if err := empty(dir, "", own, out); err != nil {
		return fmt.Errorf("clear %s: %w", dir, err)
	}
	if err := os.Remove(dir); err != nil {
		return fmt.Errorf("remove the old site: %w", err)
	}
	return nil
}

// empty empties the folder below of dir. It goes into folders, never through links.
func empty(dir, below string, own map[string]bool, out string) error {
	entries, err := os.ReadDir(filepath.Join(dir, below))
	if err != nil {
		return err
	}
	for _, e := range entries {
		name := filepath.Join(below, e.Name())
		from, to := filepath.Join(dir, name), filepath.Join(out, name)
		_, err := os.Lstat(to)
		free := errors.Is(err, fs.ErrNotExist)
		switch {
		case e.Type().IsRegular() && own[filepath.ToSlash(name)]:
			err = os.Remove(from)
		case e.IsDir() && (!free || holds(own, filepath.ToSlash(name)+"/")):
			if err = empty(dir, name, own, out); err == nil {
				err = os.Remove(from)
			}
		case free:
			if err = os.MkdirAll(filepath.Dir(to), 0o755); err == nil {
				err = os.Rename(from, to)
			}
		default:
			err = fmt.Errorf("%s is there too, and neither was written by this program", to)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

func holds(own map[string]bool, prefix string) bool {
	for name := range own {
		if strings.HasPrefix(name, prefix) {
			return true
		}
	}
	return false
}

// stages are the ends of such names, after ".NAME.new-": those of now, and those of the version
// before.
var stages = regexp.MustCompile(`^p?\d+(-\d+)?(-old)?$`)

// layout are the names of a site's files: what a run of an earlier version that was stopped may
// have left in a folder without a list.
var layout = regexp.MustCompile(`^((assets|data|lessons|licences)/[^/]+|(index|about)\.html|manifest\.webmanifest|sw\.js)$`)

// sweep removes what runs that were stopped have left beside out. Where out itself is missing, a
// whole site among it is put in its place.
func sweep(out string) error {
	parent, base := filepath.Split(out)
	entries, err := os.ReadDir(parent)
	if err != nil {
		return nil // out cannot be written either, and stage says why
	}
	for _, e := range entries {
		owner, ok := strings.CutPrefix(e.Name(), strings.TrimSuffix(stagePrefix(base), "p"))
		if !ok || !stages.MatchString(owner) || !e.IsDir() || busy(owner) {
			continue
		}
		dir := filepath.Join(parent, e.Name())
		left, err := look(dir)
		if err != nil {
			return err
		}
		if _, err := os.Lstat(out); errors.Is(err, fs.ErrNotExist) && left.own["sw.js"] && strings.HasSuffix(owner, "-old") {
			if err := os.Rename(dir, out); err != nil {
				return fmt.Errorf("bring back %s: %w", out, err)
			}
			continue
		}
		for name := range left.foreign {
			left.own[name] = left.own[name] || !left.listed && layout.MatchString(name)
		}
		if err := clear(dir, left.own, out); err != nil {
			return err
		}
	}
	return nil
}

// busy reports whether the process in the name of a stage folder is another one, and still runs.
func busy(owner string) bool {
	number, _, _ := strings.Cut(strings.TrimPrefix(owner, "p"), "-")
	pid, err := strconv.Atoi(number)
	if err != nil || !strings.HasPrefix(owner, "p") || pid == os.Getpid() {
		return false
	}
	p, err := os.FindProcess(pid) // fails on Windows where there is none
	if err != nil {
		return false
	}
	err = p.Signal(syscall.Signal(0))
	return err == nil || errors.Is(err, fs.ErrPermission)
}
