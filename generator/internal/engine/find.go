package engine

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// program finds a command by the variable that may name it, the path, or file patterns. The error
// is one line that names the package.
func program(what, variable, pkg string, names []string, patterns ...string) (string, error) {
	if p := os.Getenv(variable); variable != "" && p != "" {
		return p, nil
	}
	for _, n := range names {
		if p, err := exec.LookPath(n); err == nil {
			return p, nil
		}
	}
	for _, pattern := range patterns {
		if found, _ := filepath.Glob(pattern); len(found) > 0 {
			return found[len(found)-1], nil
		}
	}
	hint := ""
	if variable != "" {
		hint = " or name it in the variable " + variable
	}
	return "", fmt.Errorf("no %s was found: install the package %s (make tools)%s", what, pkg, hint)
}

// ChromiumPath finds Chromium.
func ChromiumPath() (string, error) {
	return program("Chromium", "CHROMIUM", "chromium",
		[]string{"chromium", "chromium-browser", "google-chrome", "google-chrome-stable"})
}

// FirefoxPath finds Firefox.
func FirefoxPath() (string, error) {
	return program("Firefox", "FIREFOX", "firefox-esr (or firefox)", []string{"firefox-esr", "firefox"})
}

func webkitPaths() (driver, browser, display string, err error) {
	pkg := "webkit2gtk-driver (WebKitGTK with MiniBrowser and WebKitWebDriver)"
	if driver, err = program("WebKitWebDriver", "WEBKIT_DRIVER", pkg, []string{"WebKitWebDriver"},
		"/usr/libexec/webkit2gtk-4.*/WebKitWebDriver", "/usr/lib*/webkit2gtk-4.*/WebKitWebDriver"); err != nil {
		return
	}
	if browser, err = program("MiniBrowser of WebKitGTK", "WEBKIT_BROWSER", pkg, nil,
		"/usr/lib/*/webkit2gtk-4.*/MiniBrowser", "/usr/libexec/webkit2gtk-4.*/MiniBrowser",
		"/usr/lib*/webkit2gtk-4.*/MiniBrowser"); err != nil {
		return
	}
	display, err = program("Xvfb", "", "xvfb", []string{"Xvfb"})
	return
}
