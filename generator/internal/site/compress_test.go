package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"testing"
)

// fixedText is a text of its own kind: some 40 KB of lines that repeat and vary.
func fixedText() []byte {
	var b bytes.Buffer
	for n := uint32(1); b.Len() < 40_000; n = n*1664525 + 1013904223 {
		fmt.Fprintf(&b, "line %d of %x, and again %d\n", n>>24, n>>20&0xff, n>>28)
	}
	return b.Bytes()
}

// TestCompressor pins what the compressor makes. Another digest means that the data files of all
// sites become others, though what is in them does not: update it only with the compressor's version
// in go.mod.
func TestCompressor(t *testing.T) {
	const pinned = "e860d5ed499b938452906e7e676badfc8c4eb38053039b8421e4e7684e86925d"
	raw := fixedText()
	packed := Compress(raw)
	if !bytes.Equal(unzip(t, packed), raw) {
		t.Fatal("unpacked, it is another text")
	}
	sum := sha256.Sum256(packed)
	if got := hex.EncodeToString(sum[:]); got != pinned {
		t.Errorf("%d bytes with the digest %s, want %s", len(packed), got, pinned)
	}
	// A compressor that is used again gives the same.
	for i := range 5 {
		Compress(raw[i*7919%len(raw):])
		if !bytes.Equal(Compress(raw), packed) {
			t.Fatalf("other bytes after %d other texts", i+1)
		}
	}
}
