// Package build runs the stages in their order: it reads the project's folder, hands each stage
// what the stages before it made, and gathers what they have to say.
package build

import (
	"fmt"
	"os"
	"path/filepath"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
	"sutur/generator/internal/site"
)

// Places below the project's folder.
const (
	SourceDir  = "site-src"
	TextDir    = "rules-content/text"
	LicenceDir = "LICENSES"
	SiteDir    = "dist"
	LogFile    = "CHANGELOG.md"
)

// Watched are the files and folders that a built site depends on.
var Watched = []string{SourceDir, "rules-content", LicenceDir, LogFile}

// Root returns the project's folder: dir or the nearest folder above it that holds a go.mod and
// rules-content.
func Root(dir string) (string, error) {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return "", fmt.Errorf("find the project: %w", err)
	}
	for d := dir; ; d = filepath.Dir(d) {
		_, err1 := os.Stat(filepath.Join(d, "go.mod"))
		_, err2 := os.Stat(filepath.Join(d, TextDir))
		if err1 == nil && err2 == nil {
			return d, nil
		}
		if d == filepath.Dir(d) {
			return "", fmt.Errorf("no project at %s or above it: a folder with go.mod and %s is expected", dir, TextDir)
		}
	}
}

// Text reads and verifies the text.
func Text(root string) (*mushaf.Text, error) {
	t, err := mushaf.Load(os.DirFS(filepath.Join(root, filepath.FromSlash(TextDir))))
	if err != nil {
		return nil, fmt.Errorf("%s/%w", TextDir, err)
	}
	return t, nil
}

// Site makes all files of the site from the sources below root. It writes nothing. With an error
// among the diagnostics there are no files.
func Site(root string) ([]bundle.File, []diag.Diagnostic) {
	s, ds := source(root)
	ds = append(ds, checkText(root)...)
	if diag.HasError(ds) {
		diag.Sort(ds)
		return nil, ds
	}
	files, more := site.Make(s)
	ds = append(ds, more...)
	diag.Sort(ds)
	return files, ds
}

func source(root string) (site.Source, []diag.Diagnostic) {
	s := site.Source{
		Dir:      filepath.Join(root, SourceDir),
		Log:      filepath.Join(root, LogFile),
		Licences: os.DirFS(filepath.Join(root, LicenceDir)),
	}
	var err error
	if s.Families, err = colour.Families(rules.Families); err != nil {
		return s, []diag.Diagnostic{{File: rules.FamiliesFile, Found: err.Error(), Do: "merge two of them"}}
	}
	s.CSS = colour.CSS(s.Families)
	if s.Text, err = Text(root); err != nil {
		return s, []diag.Diagnostic{{Found: err.Error()}}
	}
	s.Engine = func() site.Engine { return recite.New(s.Text) }
	var ds, more []diag.Diagnostic
	content := os.DirFS(filepath.Join(root, filepath.FromSlash(rules.Dir)))
	s.Rules, ds = rules.Load(content)
	s.Details, more = rules.LoadDetails(content)
	ds = append(ds, more...)
	s.Groups, more = rules.LoadGroups(content, s.Rules)
	ds = append(ds, more...)
	s.Passages = Index(s.Text)
	s.Lessons, more = lesson.Load(os.DirFS(filepath.Join(root, filepath.FromSlash(lesson.Dir))), s.Text, recite.New(s.Text), s.Rules)
	if ds = append(ds, more...); !diag.HasError(ds) {
		s.Steps = teachingOrder(s.Lessons, s.Text, s.Rules)
		ds = append(ds, lesson.CheckOrder(s.Lessons)...)
	}
	return s, ds
}
