package site

import (
	"errors"

	"golang.org/x/sys/unix"
)

// exchange exchanges two folders in one step: there is no moment without either.
func exchange(a, b string) error {
	return unsupported(unix.Renameat2(unix.AT_FDCWD, a, unix.AT_FDCWD, b, unix.RENAME_EXCHANGE))
}

// unsupported marks what a file system says that has no such call.
func unsupported(err error) error {
	if errors.Is(err, unix.EINVAL) || errors.Is(err, unix.ENOSYS) {
		return errors.Join(err, errors.ErrUnsupported)
	}
	return err
}
