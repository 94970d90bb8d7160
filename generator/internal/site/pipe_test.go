//go:build unix

package site

import "syscall"

func pipe(name string) error { return syscall.Mkfifo(name, 0o600) }
