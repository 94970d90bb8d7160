// Command cmd writes rules-content/text from the source packages: cmd A.json B.json HafsLists.ts rules-content/text
// It prints what each class of the conversion changed.
package main

import (
	"fmt"
	"os"
	"path/filepath"

	"sutur/generator/internal/importer"
)

func main() { os.Exit(run()) }

func run() int {
	if len(os.Args) != 5 {
		fmt.Fprintln(os.Stderr, "four arguments are wanted: quran.json of text A, quran-verses.json of text B, HafsLists.ts, the folder to write")
		return 2
	}
	var data [4][]byte
	for i, name := range []string{os.Args[1], os.Args[2], os.Args[3], filepath.Join(os.Args[4], "corrections.json")} {
		var err error
		if data[i], err = os.ReadFile(name); err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 2
		}
	}
	files, counts, err := importer.Import(importer.Sources{A: data[0], B: data[1], Numbers: data[2], Corrections: data[3]})
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	for name, b := range files {
		if err := os.WriteFile(filepath.Join(os.Args[4], name), b, 0o644); err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
	}
	for _, c := range counts {
		fmt.Printf("%6d  %s\n", c.Places, c.Rule)
	}
	return 0
}
