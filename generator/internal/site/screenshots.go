package site

import (
	"bytes"
	"errors"
	"fmt"
	"image/png"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"sutur/generator/internal/bundle"
)

// screenshotsDir holds what an app store or the browser's offer to install shows of the app, below
// the source folder and in the site. TestScreenshots in e2e takes the pictures.
const screenshotsDir = "screenshots"

// screenshot is a picture of the app as the manifest names it.
type screenshot struct {
	Src   string `json:"src"`
	Sizes string `json:"sizes"`
	Type  string `json:"type"`
	Form  string `json:"form_factor"`
	Label string `json:"label"`
}

// Shots are the pictures by the name of their source, in the order in which they are shown, and what
// is said of each. A name begins with the form: narrow for a phone, wide for a desk.
var Shots = [][2]string{
	{"narrow-today.png", "Today: what to do next, and why"},
	{"narrow-lines.png", "Lines: every place of the rule is found and marked"},
	{"narrow-check.png", "The check: what was found, with the reason for each place"},
	{"wide-lines.png", "Lines: every place of the rule is found and marked"},
	{"wide-rules.png", "Rules: one after the other, and why in this order"},
}

// readScreenshots reads the pictures. A project without them has none to show.
func (a *app) readScreenshots(dir string) ([]bundle.File, error) {
	var files []bundle.File
	for _, s := range Shots {
		name := s[0]
		data, err := os.ReadFile(filepath.Join(dir, screenshotsDir, name))
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err != nil {
			return nil, fmt.Errorf("read a screenshot: %w", err)
		}
		c, err := png.DecodeConfig(bytes.NewReader(data))
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		f := bundle.File{Name: hashedName(screenshotsDir, name, data), Data: data}
		form, _, _ := strings.Cut(name, "-")
		a.screenshots = append(a.screenshots, screenshot{
			Src: f.Name, Sizes: fmt.Sprintf("%dx%d", c.Width, c.Height), Type: "image/png", Form: form, Label: s[1],
		})
		files = append(files, f)
	}
	return files, nil
}
