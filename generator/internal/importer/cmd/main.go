// Command cmd writes rules-content/text from the source packages: cmd A.json B.json HafsLists.ts
// rules-content/text It prints what each class of the conversion changed.
package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"

	"sutur/generator/internal/importer"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run returns the exit code: 2 for arguments that cannot be used, 1 for sources that are not the
// reviewed ones.
func run(args []string, stdout, stderr io.Writer) int {
	if len(args) != 4 {
		fmt.Fprintln(stderr, "four arguments are expected: quran.json of text A, quran-verses.json of text B, HafsLists.ts, the folder to write")
		return 2
	}
	dir := args[3]
	var data [4][]byte
	for i, name := range []string{args[0], args[1], args[2], filepath.Join(dir, "corrections.json")} {
		var err error
		if data[i], err = os.ReadFile(name); err != nil {
			fmt.Fprintln(stderr, err)
			return 2
		}
	}
	files, counts, err := importer.Import(importer.Sources{A: data[0], B: data[1], Numbers: data[2], Corrections: data[3]})
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 1
	}
	for name, b := range files {
		if err := os.WriteFile(filepath.Join(dir, name), b, 0o644); err != nil {
			fmt.Fprintln(stderr, err)
			return 1
		}
	}
	for _, c := range counts {
		fmt.Fprintf(stdout, "%6d  %s\n", c.Places, c.Rule)
	}
	return 0
}
