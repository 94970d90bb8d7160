package host

import (
	"net"
	"net/http"
	"strings"
)

// Loopback lets h answer requests that name this machine by its loopback address or as localhost,
// and refuses all others: a page of another site could otherwise read what is served here by giving
// its own name this address.
func Loopback(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if !loopback(r.Host) {
			http.Error(w, "only 127.0.0.1, [::1] and localhost are served", http.StatusMisdirectedRequest)
			return
		}
		h.ServeHTTP(w, r)
	})
}

// loopback reports whether a Host field, with or without a port, names this machine only (RFC 1122,
// 3.2.1.3; RFC 4291, 2.5.3; RFC 6761, 6.3).
func loopback(host string) bool {
	if name, _, err := net.SplitHostPort(host); err == nil {
		host = name
	}
	host = strings.ToLower(strings.TrimSuffix(strings.Trim(host, "[]"), "."))
	ip := net.ParseIP(host)
	return ip != nil && ip.IsLoopback() || host == "localhost" || strings.HasSuffix(host, ".localhost")
}
