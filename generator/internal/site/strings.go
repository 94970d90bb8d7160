package site

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strings"

	"sutur/generator/internal/diag"
)

// The catalogue of words, what the first screen says and the rest, and what looks them up, below the
// source folder.
var stringsFiles = []string{"strings/en.json", "strings/later.json"}

const appDir = "app"

const stringsPlace = "site-src/strings/en.json, or to later.json beside it where the first screen does not say it"

// checkStrings reports strings that are asked for and are not there, and entries of the catalogue
// that are neither a text nor a set of plural forms. A project without a catalogue has nothing to
// check.
func checkStrings(dir string) (ds []diag.Diagnostic) {
	keys := map[string]bool{}
	for _, f := range stringsFiles {
		src, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(f)))
		if err != nil {
			continue
		}
		ds = append(ds, readStrings(f, src, keys)...)
	}
	if len(ds) > 0 || len(keys) == 0 {
		return ds
	}
	err := fs.WalkDir(os.DirFS(filepath.Join(dir, appDir)), ".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || path.Ext(p) != ".ts" {
			return err
		}
		code, err := os.ReadFile(filepath.Join(dir, appDir, filepath.FromSlash(p)))
		ds = append(ds, asked("site-src/"+appDir+"/"+p, code, keys)...)
		return err
	})
	if err != nil {
		ds = append(ds, diag.Diagnostic{File: "site-src/" + appDir, Found: err.Error()})
	}
	return ds
}

// readStrings adds the keys of one file of the catalogue.
func readStrings(file string, src []byte, keys map[string]bool) (ds []diag.Diagnostic) {
	dec := json.NewDecoder(bytes.NewReader(src))
	say := func(found, do string) {
		ds = append(ds, placed("site-src/"+file, src, int(dec.InputOffset()), found, do))
	}
	if tok, err := dec.Token(); err != nil || tok != json.Delim('{') {
		say("this is no JSON object", "write { key: text, … }")
		return ds
	}
	for dec.More() {
		tok, err := dec.Token()
		key, ok := tok.(string)
		var value any
		if err == nil && ok {
			err = dec.Decode(&value)
		}
		if err != nil {
			say("this is not JSON: "+err.Error(), "correct the entry after this place")
			return ds
		}
		if keys[key] {
			say(fmt.Sprintf("the string %q is there twice", key), "keep one of them")
		}
		keys[key] = true
		if forms, ok := value.(map[string]any); ok {
			if _, ok := forms["other"].(string); !ok {
				say(fmt.Sprintf("the string %q has no form \"other\"", key), "write the form for all numbers that have none of their own")
			}
		} else if _, ok := value.(string); !ok {
			say(fmt.Sprintf("the string %q is neither a text nor a set of plural forms", key), "write it between quotes")
		}
	}
	if _, err := dec.Token(); err != nil {
		say("the catalogue does not end", "write } at its end")
	}
	return ds
}

var (
	call    = regexp.MustCompile(`\bt\(`)
	literal = regexp.MustCompile(`'([\w.-]+)'`)
	begun   = regexp.MustCompile("`([a-z][a-z-]*\\.[a-z.-]*)\\$\\{")
)

// asked reports the keys that code looks up, t('key'), and that are not there;
// of a key that is put together, `begin.${…}`, that none begins so.
func asked(file string, code []byte, keys map[string]bool) (ds []diag.Diagnostic) {
	for _, at := range call.FindAllIndex(code, -1) {
		arg := firstArgument(code[at[1]:])
		for _, m := range literal.FindAllSubmatchIndex(arg, -1) {
			key := string(arg[m[2]:m[3]])
			whole := len(bytes.TrimSpace(arg)) == m[1]-m[0]
			if (whole || strings.Contains(key, ".")) && !keys[key] {
				ds = append(ds, placed(file, code, at[1]+m[0], fmt.Sprintf("there is no string %q", key), "add it to "+stringsPlace))
			}
		}
		for _, m := range begun.FindAllSubmatchIndex(arg, -1) {
			if begin := string(arg[m[2]:m[3]]); !anyBegins(keys, begin) {
				ds = append(ds, placed(file, code, at[1]+m[0], fmt.Sprintf("no string begins with %q", begin), "add those that are meant to "+stringsPlace))
			}
		}
	}
	return ds
}

func anyBegins(keys map[string]bool, begin string) bool {
	for k := range keys {
		if strings.HasPrefix(k, begin) {
			return true
		}
	}
	return false
}

// firstArgument returns code up to the comma or bracket that ends an argument.
func firstArgument(code []byte) []byte {
	depth := 0
	for i, c := range code {
		switch c {
		case '(', '[', '{':
			depth++
		case ')', ']', '}':
			depth--
		}
		if depth < 0 || depth == 0 && c == ',' {
			return code[:i]
		}
	}
	return code
}

// placed is a mistake at a byte of a file.
func placed(file string, src []byte, off int, found, do string) diag.Diagnostic {
	before := src[:min(off, len(src))]
	return diag.Diagnostic{
		File: file, Found: found, Do: do,
		Line: 1 + bytes.Count(before, []byte("\n")),
		Col:  1 + len([]rune(string(before[bytes.LastIndexByte(before, '\n')+1:]))),
	}
}
