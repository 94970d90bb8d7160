package cli

import (
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"sutur/generator/internal/build"
	"sutur/generator/internal/copies"
)

// runVerifyCopy compares a copy of the site, on a host or in a folder, with the list of a site that
// was built here.
func runVerifyCopy(e *env, args []string) error {
	flags := flag.NewFlagSet("verify-copy", flag.ContinueOnError)
	name := flags.String("list", filepath.Join(e.root, build.SiteDir, copies.ListName), "compare with the list in `FILE`")
	rest, err := parse(flags, args)
	if err != nil {
		return err
	}
	if len(rest) != 1 {
		return usagef("verify-copy: %d places given; expected is one, an address or a folder", len(rest))
	}
	data, err := os.ReadFile(*name)
	if errors.Is(err, fs.ErrNotExist) {
		return usagef("verify-copy: there is no list %s; build the site first, or give --list FILE", shown(*name))
	}
	if err != nil {
		return fmt.Errorf("read the list: %w", err)
	}
	list, err := copies.ParseList(data)
	if err != nil {
		return usageError{fmt.Sprintf("verify-copy: %s: %v", shown(*name), err)}
	}
	from, err := copyAt(rest[0])
	if err != nil {
		return usageError{"verify-copy: " + err.Error()}
	}
	problems, err := copies.Check(e.ctx, list, from)
	if err != nil {
		return fmt.Errorf("verify-copy: %w", err)
	}
	for _, p := range problems {
		fmt.Fprintln(e.stdout, p)
	}
	if dir, ok := from.(copies.Folder); ok {
		extra, err := dir.Extra(list)
		if err != nil {
			return fmt.Errorf("verify-copy: %w", err)
		}
		for _, name := range extra {
			fmt.Fprintf(e.stdout, "%s is no file of the site\n", name)
		}
		problems = append(problems, make([]copies.Problem, len(extra))...)
	}
	if len(problems) > 0 {
		return fmt.Errorf("verify-copy: %d of %d files are not those of the build", len(problems), len(list))
	}
	fmt.Fprintf(e.stdout, "all %d files are those of the build\n", len(list))
	return nil
}

// copyAt is the copy at an address, or in a folder that is there.
func copyAt(place string) (copies.Source, error) {
	if strings.Contains(place, "://") {
		return copies.NewHost(place)
	}
	if i, err := os.Stat(place); err != nil || !i.IsDir() {
		return nil, fmt.Errorf("%q is no folder; expected is a folder, or an address with http:// or https://", place)
	}
	return copies.Folder(place), nil
}
