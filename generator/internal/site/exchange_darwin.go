package site

import (
	"errors"

	"golang.org/x/sys/unix"
)

// exchange exchanges two folders in one step: there is no moment without either.
func exchange(a, b string) error {
	err := unix.RenamexNp(a, b, unix.RENAME_SWAP)
	if errors.Is(err, unix.ENOTSUP) || errors.Is(err, unix.EINVAL) {
		return errors.Join(err, errors.ErrUnsupported)
	}
	return err
}
