package lesson

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// keys are those that front matter may hold.
var keys = []string{"id", "kind", "name", "arabic", "translit", "family", "rules", "needs", "counts", "order"}

// field is one line of front matter. off is the byte offset of the value in the file.
type field struct {
	key, value string
	off        int
}

// problem is a mistake at a byte offset.
type problem struct {
	off       int
	found, do string
}

const fence = "---"

// frontMatter reads the lines between the two fences at the head of src: "key: value", one a line,
// no key twice. It returns the offset of the text after the second fence, or len(src) where there
// is none.
func frontMatter(src string) (fields []field, body int, problems []problem) {
	say := func(off int, do, found string, args ...any) {
		problems = append(problems, problem{off, fmt.Sprintf(found, args...), do})
	}
	line, next := cutLine(src, 0)
	if line != fence {
		say(0, "begin the file with ---, lines of key: value, and --- again", "there is no front matter")
		return nil, 0, problems
	}
	for next < len(src) {
		off := next
		line, next = cutLine(src, off)
		if line == fence {
			return fields, next, problems
		}
		key, value, ok := strings.Cut(line, ":")
		switch {
		case strings.TrimSpace(line) == "":
			continue
		case !utf8.ValidString(line):
			say(off, "write the file in UTF-8", "these bytes are not UTF-8")
		case !ok:
			say(off, "write key: value", "%q is not front matter", line)
		case !slices.Contains(keys, key):
			say(off, "keys are "+strings.Join(keys, ", "), "the key %q is not known", key)
		case slices.ContainsFunc(fields, func(f field) bool { return f.key == key }):
			say(off, "keep one of them", "the key %s is there twice", key)
		case strings.TrimSpace(value) == "":
			say(off, "write its value or remove the line", "the key %s has no value", key)
		default:
			at := off + len(key) + 1 + len(value) - len(strings.TrimLeftFunc(value, unicode.IsSpace))
			fields = append(fields, field{key, strings.TrimSpace(value), at})
		}
	}
	say(len(src), "write --- on a line of its own after the last key", "the front matter does not end")
	return fields, len(src), problems
}

// cutLine returns the line of src that begins at off, without its line end, and the offset of the
// next.
func cutLine(src string, off int) (line string, next int) {
	line, _, ok := strings.Cut(src[off:], "\n")
	next = off + len(line)
	if ok {
		next++
	}
	return strings.TrimSuffix(line, "\r"), next
}

// items splits a list at its commas. The offsets are those of each item in the file.
func (f field) items() (list []field) {
	off := f.off
	for part := range strings.SplitSeq(f.value, ",") {
		if s := strings.TrimSpace(part); s != "" {
			list = append(list, field{f.key, s, off + strings.Index(part, s)})
		}
		off += len(part) + 1
	}
	return list
}
