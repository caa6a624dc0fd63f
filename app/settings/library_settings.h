// Where the settings say that the case library is. The one table of its keys; each is empty by default:
//
//   key               type  meaning
//   cases/library     text  "postgresql": a server's database; anything else: a SQLite file
//   library/path      text  the SQLite file; empty: cases.library in the person's data folder
//   library/service   text  PostgreSQL: a name in ~/.pg_service.conf, which then says all the rest
//   library/host      text  PostgreSQL: host, or the folder of a Unix socket
//   library/port      int   PostgreSQL: 5432
//   library/database  text  PostgreSQL: "cases"
//   library/user      text  PostgreSQL: empty: the system's
//   library/tls       text  PostgreSQL: sslmode; "require". "verify-full" where the server's certificate can be checked.
//
// No key holds a password: see LibraryPlace.
#pragma once

#include "app/library/library_place.h"

namespace gauge::app {

LibraryPlace libraryPlaceOfSettings();
void setLibraryPlaceInSettings(const LibraryPlace& place);

} // namespace gauge::app
