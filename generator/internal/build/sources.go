package build

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"unicode/utf8"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/rules"
)

// textDirs hold sources that are text: what is in them is shown or run.
var textDirs = []string{
	SourceDir + "/app", SourceDir + "/pages", SourceDir + "/strings", SourceDir + "/style", rules.Dir, lesson.Dir, LicenceDir,
}

// kinds are the extensions of text in these folders.
var kinds = []string{".ts", ".html", ".json", ".css", ".md", ".txt"}

// checkText looks for bytes in the sources that are no text: what is no UTF-8, and control
// characters other than the ends of lines and tabs.
func checkText(root string) (ds []diag.Diagnostic) {
	for _, dir := range textDirs {
		err := fs.WalkDir(os.DirFS(filepath.Join(root, filepath.FromSlash(dir))), ".", func(p string, d fs.DirEntry, err error) error {
			if err != nil || !d.Type().IsRegular() || !slices.Contains(kinds, path.Ext(p)) {
				return err
			}
			name := dir + "/" + p
			src, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(name)))
			if err != nil {
				return err
			}
			if found, do, off := notText(src); found != "" {
				before := src[:off]
				ds = append(ds, diag.Diagnostic{
					File: name, Found: found, Do: do,
					Line: 1 + bytes.Count(before, []byte("\n")),
					Col:  1 + utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:]),
				})
			}
			return nil
		})
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			ds = append(ds, diag.Diagnostic{File: dir, Found: err.Error()})
		}
	}
	return ds
}

// notText returns what is wrong with the first byte of src that is no text.
func notText(src []byte) (found, do string, off int) {
	for off < len(src) {
		r, size := utf8.DecodeRune(src[off:])
		switch {
		case r == utf8.RuneError && size == 1:
			return fmt.Sprintf("the byte %#02x is not UTF-8", src[off]), "write the file in UTF-8", off
		case r < ' ' && r != '\n' && r != '\r' && r != '\t', r == 0x7f, 0x80 <= r && r < 0xa0:
			return fmt.Sprintf("the control character U+%04X", r), "remove it", off
		}
		off += size
	}
	return "", "", 0
}
