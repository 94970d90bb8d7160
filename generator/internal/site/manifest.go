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

// manifest is the web application manifest (W3C, Web Application Manifest).
type manifest struct {
	Name        string `json:"name"`
	ShortName   string `json:"short_name"`
	Description string `json:"description"`
	ID          string `json:"id"`
	StartURL    string `json:"start_url"`
	Scope       string `json:"scope"`
	Display     string `json:"display"`
	Lang        string `json:"lang"`
	Dir         string `json:"dir"`
	Background  string `json:"background_color"`
	Theme       string `json:"theme_color"`
	Icons       []icon `json:"icons"`
}

type icon struct {
	Src     string `json:"src"`
	Sizes   string `json:"sizes"`
	Type    string `json:"type"`
	Purpose string `json:"purpose,omitempty"`
}

func (a app) manifest() bundle.File {
	return bundle.File{Name: manifestName, Data: encode(manifest{
		Name:        "Sutur",
		ShortName:   "Sutur",
		Description: description,
		ID:          "./", StartURL: "./", Scope: "./",
		Display: "standalone", Lang: "en", Dir: "ltr", Background: colour.PaperLight, Theme: colour.PaperLight,
		Icons: a.iconList,
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
