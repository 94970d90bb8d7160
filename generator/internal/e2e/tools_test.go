package e2e

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// TestTools runs .ci/tools where nothing may be installed: what is missing or too old is said in
// one line, and what is there is left alone.
func TestTools(t *testing.T) {
	script, err := filepath.Abs(filepath.Join(root, ".ci/tools"))
	if err != nil {
		t.Fatal(err)
	}
	for _, x := range []struct{ name, node, npm, says string }{
		{"Node 18 of Debian 12", "v18.20.4", "9.2.0", ""},
		{"Node 20 of Debian 13", "v20.19.2", "9.2.0", ""},
		{"a later one", "v24.1.0", "11.0.0", ""},
		{"too old", "v16.20.2", "8.0.0", "the tests need Node 18.20, or 20.10 and newer; found v16.20.2"},
		{"too old an 18", "v18.19.1", "9.2.0", "found v18.19.1"},
		{"between two that are supported", "v19.9.0", "9.2.0", "found v19.9.0"},
		{"too old a 20", "v20.9.0", "9.2.0", "found v20.9.0"},
		{"no version at all", "command", "9.2.0", "found command"},
		{"no Node", "", "9.2.0", "the tests need: node; install"},
		{"no npm", "v18.20.4", "", "the tests need: node; install"},
	} {
		t.Run(x.name, func(t *testing.T) {
			bin := t.TempDir()
			for name, says := range map[string]string{"node": x.node, "npm": x.npm, "id": "1000"} {
				if says == "" {
					continue
				}
				if err := os.WriteFile(filepath.Join(bin, name), []byte("#!/bin/sh\necho "+says+"\n"), 0o755); err != nil {
					t.Fatal(err)
				}
			}
			cmd := exec.Command("/bin/sh", script, "node")
			cmd.Env = []string{"PATH=" + bin}
			out, err := cmd.CombinedOutput()
			if said := string(out); (err == nil) != (x.says == "") || !strings.Contains(said, x.says) ||
				x.says == "" && said != "" || x.says != "" && strings.Count(said, "\n") != 1 {
				t.Errorf("%v, said %q; want one line with %q", err, said, x.says)
			}
		})
	}
}
