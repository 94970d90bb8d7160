package cli

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"slices"
	"strings"
	"testing"
)

// runHere runs a command in this project and returns its exit code, standard output and standard
// error.
func runHere(args ...string) (int, string, string) {
	var out, errs bytes.Buffer
	code := run(context.Background(), ".", args, &out, &errs)
	return code, out.String(), errs.String()
}

func TestBadInput(t *testing.T) {
	for _, c := range []struct {
		args string
		want []string // parts of the one line: what was wrong, what is accepted
	}{
		{"", []string{"no command", "accepted are build, serve"}},
		{"bild", []string{`"bild" is not a command`, "accepted are build, serve"}},
		{"build --fast", []string{"-fast", "accepted are --out DIR"}},
		{"build --out", []string{"out", "accepted are --out DIR"}},
		{"build now", []string{`"now" is one argument too many`}},
		{"build --help", []string{"help is a command"}},
		{"serve --port x", []string{`"x"`, "accepted are --port N"}},
		{"serve --port 70000", []string{"no port 70000", "65535"}},
		{"annotate", []string{"no reference given", "accepted are a surah"}},
		{"annotate 115", []string{`"115"`, "surahs 1 to 114"}},
		{"annotate 112:5", []string{`"112:5"`}},
		{"annotate 112:3-1", []string{"ends before it begins"}},
		{"annotate word", []string{`"word" is not a reference`, "accepted are a surah"}},
		{"annotate 112 --loud", []string{"-loud", "accepted are --join REF, --json, --stop REF.WORD"}},
		{"annotate 112 --stop", []string{"stop"}},
		{"annotate 112 --stop 112:1", []string{`"112:1" is not a word of a verse`, "such as 78:1.2"}},
		{"annotate 112 --stop 112:1.0", []string{"112:1 has words 1 to 4"}},
		{"annotate 112 --stop 112:1.5", []string{"112:1 has words 1 to 4"}},
		{"annotate 112 --stop 112:1-2.1", []string{"more than one verse"}},
		{"annotate 112 --stop 112.1", []string{"more than one verse"}},
		{"annotate 112 --stop 200:1.1", []string{"200:1", "surahs 1 to 114"}},
		{"annotate 112 --join 112:9", []string{`"112:9"`}},
		{"annotate 114 --join 114:6", []string{"past the end of the text"}},
		{"annotate 112 --join 112:1 --stop 112:1.4", []string{"accepted is one of the two"}},
		{"verify 78", []string{`"78" is one argument too many`}},
		{"verify --all", []string{"-all", "accepted are no flags"}},
		{"serve now", []string{`"now" is one argument too many`}},
	} {
		t.Run(c.args, func(t *testing.T) {
			code, out, errs := runHere(strings.Fields(c.args)...)
			if code != 2 || out != "" || strings.Count(errs, "\n") != 1 {
				t.Fatalf("exit %d, output %q, errors %q", code, out, errs)
			}
			for _, w := range c.want {
				if !strings.Contains(errs, w) {
					t.Errorf("%q is not in %q", w, errs)
				}
			}
		})
	}
}

func TestOutsideAProject(t *testing.T) {
	var out, errs bytes.Buffer
	if code := run(context.Background(), t.TempDir(), []string{"build"}, &out, &errs); code != 2 || !strings.Contains(errs.String(), "no project at") {
		t.Errorf("exit %d, errors %q", code, errs.String())
	}
}

func TestHelp(t *testing.T) {
	for _, arg := range []string{"help", "-h", "--help"} {
		code, out, errs := runHere(arg)
		if code != 0 || errs != "" {
			t.Errorf("%s: exit %d, errors %q", arg, code, errs)
		}
		for _, c := range commands() {
			if !strings.Contains(out, "  "+c.name) {
				t.Errorf("%s: %s is not in the help", arg, c.name)
			}
		}
	}
}

func TestParse(t *testing.T) {
	for _, c := range []struct {
		args, rest string
		json       bool
		stop       string
	}{
		{"78 79", "78 79", false, ""},
		{"--json 78", "78", true, ""},
		{"78 -json 79 --stop 78:1.2", "78 79", true, "78:1.2"},
		{"78 --stop=a -- --json", "78 --json", false, "a"},
		{"", "", false, ""},
		{"--", "", false, ""},
	} {
		fs := flag.NewFlagSet("x", flag.ContinueOnError)
		json, stop := fs.Bool("json", false, ""), fs.String("stop", "", "")
		rest, err := parse(fs, strings.Fields(c.args))
		if err != nil || !slices.Equal(rest, strings.Fields(c.rest)) || *json != c.json || *stop != c.stop {
			t.Errorf("%q: rest %q, json %t, stop %q, %v", c.args, rest, *json, *stop, err)
		}
	}
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestLostOutput(t *testing.T) {
	var errs bytes.Buffer
	if code := run(context.Background(), ".", []string{"help"}, full{}, &errs); code != 1 || !strings.Contains(errs.String(), "disk full") {
		t.Errorf("exit %d, errors %q", code, errs.String())
	}
}
