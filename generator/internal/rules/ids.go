package rules

// IDs are the engine's rules in its order.
var IDs = []string{
	"heavy-letter", "heavy-lam", "light-lam", "heavy-ra", "light-ra", "hamzat-wasl", "sun-lam", "moon-lam", "silent-letter",
	"ghunnah", "noon-izhar", "noon-izhar-mutlaq", "noon-idgham-ghunnah", "noon-idgham", "noon-iqlab", "noon-ikhfa",
	"meem-ikhfa", "meem-idgham", "meem-izhar", "idgham-mithlayn", "idgham-mutajanisayn", "idgham-mutaqaribayn", "qalqalah",
	"madd-tabii", "madd-badal", "madd-iwad", "madd-silah-short", "madd-silah-long", "madd-muttasil", "madd-munfasil",
	"madd-lazim", "madd-lazim-letter", "madd-arid", "madd-lin", "stop-form", "pause-sign", "sakt", "imalah", "ishmam",
	"tas-hil", "sad-as-seen", "sajdah",
}
