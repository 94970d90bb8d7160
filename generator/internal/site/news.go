package site

import (
	"errors"
	"fmt"
	"os"
	"strings"

	"sutur/generator/internal/bundle"
)

// newsName is the file that says what the version has for families, as a list of sentences. Its name
// has no hash: a page of an older version looks for it in what is kept of the newer one, and says
// what it has not heard of.
const newsName = "news.json"

// newsHeading begins the part of the change log that is for families.
const newsHeading = "For families and teachers:"

// news reads the items for families in a change log: below newsHeading, in every version.
func news(log string) ([]string, error) {
	var items []string
	within, open := false, false
	for line := range strings.Lines(log) {
		line = strings.TrimRight(line, "\r\n")
		switch {
		case line == newsHeading:
			within, open = true, false
		case strings.HasPrefix(line, "#") || line != "" && line[0] != ' ' && line[0] != '-':
			within, open = false, false
		case !within:
		case strings.HasPrefix(line, "- "):
			items, open = append(items, strings.TrimSpace(line[2:])), true
		case strings.TrimSpace(line) == "":
			open = false
		case open:
			items[len(items)-1] += " " + strings.TrimSpace(line)
		default:
			return nil, fmt.Errorf("%q belongs to no item; an item begins with “- ”", line)
		}
	}
	if len(items) == 0 {
		return nil, errors.New("nothing is said for families; expected is a list below “" + newsHeading + "”")
	}
	for _, item := range items {
		if strings.ContainsAny(item, "`*_[]<>") {
			return nil, fmt.Errorf("the item %.60q has signs of markup; families read it as plain words", item)
		}
	}
	return items, nil
}

func newsFile(path string) (bundle.File, error) {
	log, err := os.ReadFile(path)
	if err != nil {
		return bundle.File{}, fmt.Errorf("read the change log: %w", err)
	}
	items, err := news(string(log))
	if err != nil {
		return bundle.File{}, err
	}
	return bundle.File{Name: newsName, Data: encode(items)}, nil
}
