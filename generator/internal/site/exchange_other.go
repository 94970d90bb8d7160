//go:build !linux && !darwin

package site

import (
	"errors"
	"io/fs"
	"os"
)

// exchange is not to be had here.
func exchange(_, b string) error {
	if _, err := os.Lstat(b); errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return errors.ErrUnsupported
}
