package site

import (
	"bytes"
	"fmt"
	"image/png"
	"os"
	"path"
	"path/filepath"
	"strings"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
)

const (
	manifestName = "manifest.webmanifest"
	iconsDir     = "icons"
	description  = "From reading Arabic letters to reading the Qur'an with its recitation rules, one rule at a time, on a few lines. Works with no signal."
)

// manifest is the web application manifest (W3C, Web Application Manifest, with its note Application
// Information, and the draft Web Share Target). It has no id: one is resolved against the origin and
// not against the manifest, so that two copies on one host would be one app; without it the start
// address is the id.
type manifest struct {
	Name        string       `json:"name"`
	ShortName   string       `json:"short_name"`
	Description string       `json:"description"`
	StartURL    string       `json:"start_url"`
	Scope       string       `json:"scope"`
	Display     string       `json:"display"`
	Lang        string       `json:"lang"`
	Dir         string       `json:"dir"`
	Background  string       `json:"background_color"`
	Theme       string       `json:"theme_color"`
	Categories  []string     `json:"categories"`
	Icons       []icon       `json:"icons"`
	Shortcuts   []shortcut   `json:"shortcuts"`
	Screenshots []screenshot `json:"screenshots,omitempty"`
	ShareTarget shareTarget  `json:"share_target"`
}

type icon struct {
	Src     string `json:"src"`
	Sizes   string `json:"sizes"`
	Type    string `json:"type"`
	Purpose string `json:"purpose,omitempty"`
}

// shortcut is a screen that the app's icon offers.
type shortcut struct {
	Name  string `json:"name"`
	URL   string `json:"url"`
	Icons []icon `json:"icons,omitempty"`
}

// shareTarget is where the system sends what other apps share: the service worker answers there
// (site-src/app/worker/brought.ts), and share/brought.ts reads the form.
type shareTarget struct {
	Action  string `json:"action"`
	Method  string `json:"method"`
	Enctype string `json:"enctype"`
	Params  struct {
		Title string     `json:"title"`
		Text  string     `json:"text"`
		URL   string     `json:"url"`
		Files []sharedAs `json:"files"`
	} `json:"params"`
}

type sharedAs struct {
	Name   string   `json:"name"`
	Accept []string `json:"accept"`
}

// backupTypes are those under which backups are handed over; some systems share no JSON but text.
var backupTypes = []string{"application/json", ".json", "text/plain", ".txt"}

func newShareTarget() shareTarget {
	s := shareTarget{Action: "./brought", Method: "POST", Enctype: "multipart/form-data"}
	s.Params.Title, s.Params.Text, s.Params.URL = "title", "text", "url"
	s.Params.Files = []sharedAs{{"files", backupTypes}}
	return s
}

// shortcuts are the screens that the icon offers, each with the app's icon.
func (a app) shortcuts() (list []shortcut) {
	var icons []icon
	for _, i := range a.iconList {
		if i.Purpose == "" && i.Sizes == "192x192" {
			icons = append(icons, i)
		}
	}
	for _, s := range [][2]string{{"Today", "today"}, {"Lines", "lines"}, {"Record", "record"}, {"Everyone", "learners"}} {
		list = append(list, shortcut{Name: s[0], URL: "./#/" + s[1], Icons: icons})
	}
	return list
}

func (a app) manifest() bundle.File {
	return bundle.File{Name: manifestName, Data: encode(manifest{
		Name:        "Sutur",
		ShortName:   "Sutur",
		Description: description,
		StartURL:    "./", Scope: "./",
		Display: "standalone", Lang: "en", Dir: "ltr", Background: colour.PaperLight, Theme: colour.PaperLight,
		Categories:  []string{"education", "books"},
		Icons:       a.iconList,
		Shortcuts:   a.shortcuts(),
		Screenshots: a.screenshots,
		ShareTarget: newShareTarget(),
	})}
}

// readIcons reads site-src/icons, remembers their names for pages and for the manifest, and returns
// them as files. A picture whose name has "maskable" in it may be cut to any shape by the system;
// one that starts with "touch" is for pages alone.
func (a *app) readIcons(dir string) ([]bundle.File, error) {
	a.icons, a.iconList = map[string]string{}, []icon{}
	entries, err := os.ReadDir(filepath.Join(dir, iconsDir))
	if err != nil {
		return nil, fmt.Errorf("list icons: %w", err)
	}
	var files []bundle.File
	for _, e := range entries {
		ext := path.Ext(e.Name())
		if ext != ".svg" && ext != ".png" {
			continue
		}
		data, err := os.ReadFile(filepath.Join(dir, iconsDir, e.Name()))
		if err != nil {
			return nil, fmt.Errorf("read an icon: %w", err)
		}
		f, err := bundle.Minify(bundle.File{Name: e.Name(), Data: data})
		if err != nil {
			return nil, err
		}
		f.Name = hashedName("assets", e.Name(), f.Data)
		i := icon{Src: f.Name, Sizes: "any", Type: "image/svg+xml"}
		if ext == ".png" {
			c, err := png.DecodeConfig(bytes.NewReader(data))
			if err != nil {
				return nil, fmt.Errorf("%s: %w", e.Name(), err)
			}
			i.Sizes, i.Type = fmt.Sprintf("%dx%d", c.Width, c.Height), "image/png"
		}
		if strings.Contains(e.Name(), "maskable") {
			i.Purpose = "maskable"
		}
		a.icons[iconsDir+"/"+e.Name()] = f.Name
		if !strings.HasPrefix(e.Name(), "touch") {
			a.iconList = append(a.iconList, i)
		}
		files = append(files, f)
	}
	return files, nil
}
