package site

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"path"
	"slices"

	"sutur/generator/internal/bundle"
)

// Offline reports whether the service worker keeps a file of the site: what nobody needs without a
// network is left out.
func Offline(name string) bool {
	return name != OneFile && path.Dir(name) != screenshotsDir
}

// precache makes the file that lists the files that are kept offline, sorted by name, with the length
// and the digest of each, and what the service worker has to know of that file. The version is the
// digest of all names and contents.
//
// The list is a file of its own because digests do not compress: within the worker they would be
// part of the first open.
func precache(files []bundle.File) (bundle.File, bundle.Precache) {
	files = slices.DeleteFunc(slices.Clone(files), func(f bundle.File) bool { return !Offline(f.Name) })
	rows := make([]bundle.Listed, len(files))
	each(len(files), func() func(int) {
		return func(i int) { rows[i] = bundle.NewListed(files[i], unpacked(files[i])) }
	})
	h := sha256.New()
	for _, r := range rows {
		fmt.Fprintf(h, "%s\x00%x\n", r.Name, r.Forms[0].SHA)
	}
	list := bundle.File{Data: encode(rows)}
	list.Name = hashedName("assets", "files.json", list.Data)
	return list, bundle.Precache{
		Version: hex.EncodeToString(h.Sum(nil)[:8]),
		List:    bundle.NewListed(list, nil),
	}
}

// unpacked returns what is in a .gz file, and nil for other files.
func unpacked(f bundle.File) []byte {
	if path.Ext(f.Name) != ".gz" {
		return nil
	}
	r, err := gzip.NewReader(bytes.NewReader(f.Data))
	if err != nil {
		panic(err) // compress made it
	}
	raw, err := io.ReadAll(r)
	if err != nil {
		panic(err)
	}
	return raw
}
