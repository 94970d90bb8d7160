// Package copies tells whether a copy of the site, in a folder or on a host, is what the build made.
package copies

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"regexp"
	"slices"
	"strings"

	"sutur/generator/internal/bundle"
)

// ListName is the file of a site that says what all its other files hold. Its format is that of
// sha256sum (GNU coreutils): the digest in hexadecimal, two blanks, the name.
const ListName = "sha256.txt"

// Listed is a file of a site: its name, with slashes, and the SHA-256 of what it holds.
type Listed struct {
	Name string
	SHA  [sha256.Size]byte
}

// List makes the file that lists files, sorted by name.
func List(files []bundle.File) bundle.File {
	var b bytes.Buffer
	for _, f := range files {
		fmt.Fprintf(&b, "%x  %s\n", sha256.Sum256(f.Data), f.Name)
	}
	return bundle.File{Name: ListName, Data: b.Bytes()}
}

var row = regexp.MustCompile(`^([0-9a-f]{64})  (.+)$`)

// ParseList reads such a file. A list without a file, or with a name that leads out of its folder
// or occurs twice, is refused.
func ParseList(data []byte) ([]Listed, error) {
	var all []Listed
	seen := map[string]bool{}
	lines := bufio.NewScanner(bytes.NewReader(data))
	for n := 1; lines.Scan(); n++ {
		m := row.FindStringSubmatch(lines.Text())
		if m == nil {
			return nil, fmt.Errorf("line %d of the list is %.60q; expected are 64 hexadecimal digits, two blanks and a name", n, lines.Text())
		}
		name := m[2]
		if !fs.ValidPath(name) || strings.ContainsAny(name, "\\?#%\x00") || seen[name] {
			return nil, fmt.Errorf("line %d of the list has the name %.60q; expected is the name of a file below the site, once", n, name)
		}
		seen[name] = true
		one := Listed{Name: name}
		if _, err := hex.Decode(one.SHA[:], []byte(m[1])); err != nil {
			return nil, fmt.Errorf("line %d of the list: %w", n, err)
		}
		all = append(all, one)
	}
	if err := lines.Err(); err != nil {
		return nil, fmt.Errorf("read the list: %w", err)
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("the list is empty")
	}
	slices.SortFunc(all, func(a, b Listed) int { return strings.Compare(a.Name, b.Name) })
	return all, nil
}
