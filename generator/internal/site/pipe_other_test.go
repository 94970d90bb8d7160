//go:build !unix

package site

import "errors"

func pipe(string) error { return errors.ErrUnsupported }
