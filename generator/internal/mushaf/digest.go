package mushaf

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"strings"
)

// checkDigests holds every verse, then the whole and the file of the prostrations, against
// DigestFile. The verses come first so that the verse at fault is named.
func (t *Text) checkDigests(dir fs.FS) error {
	raw, err := fs.ReadFile(dir, DigestFile)
	if err != nil {
		return fmt.Errorf("read the digests: %w", err)
	}
	lines := strings.Split(strings.TrimSuffix(string(raw), "\n"), "\n")
	if len(lines) < 2 {
		return fmt.Errorf("%s: a digest is missing", DigestFile)
	}
	for n, l := range lines[2:] {
		ref, want, _ := strings.Cut(l, "\t")
		if n >= len(t.Verses) {
			return fmt.Errorf("%s:%d: digest of %s, a verse that is not in the text", DigestFile, n+3, ref)
		}
		v := &t.Verses[n]
		name := fmt.Sprintf("%d:%d", v.Surah, v.Ayah)
		if ref != name {
			return fmt.Errorf("%s:%d: found %q; the digest of %s is expected", DigestFile, n+3, ref, name)
		}
		if hex.EncodeToString(v.Digest[:]) != want {
			return fmt.Errorf("%s: %s is not the text that was imported (SHA-256 %x); restore it", TextFile, name, v.Digest)
		}
	}
	if len(lines)-2 != len(t.Verses) {
		return fmt.Errorf("%s: a digest is missing", DigestFile)
	}
	marked, err := fs.ReadFile(dir, ProstrationFile)
	if err != nil {
		return fmt.Errorf("read the words of the prostrations: %w", err)
	}
	for i, want := range []string{
		"whole\t" + hex.EncodeToString(t.Digest[:]),
		fmt.Sprintf("%s\t%x", ProstrationFile, sha256.Sum256(marked)),
	} {
		if lines[i] != want {
			return fmt.Errorf("%s:%d: found %q; the text has %q", DigestFile, i+1, lines[i], want)
		}
	}
	return nil
}
