// The library's tables, built step by step. Steps are numbered from 1, never changed once released, and each runs in one
// transaction together with the note that it was done: a library is at one step or at the next.
//
//   cases      facts for search, the number of the present version, the tail of its edits; one checksum over all of it
//   versions   the text of the case at each saving ('main'), or as it was refused ('branch'); two checksums
//   edits      what was done since a version: rows of (case, base version) are the tail of that version, chained by checksum
//   leases     who edits a case now (no checksum: a damaged lease only ever loses the right to write)
#pragma once

#include "app/library/database.h"

namespace gauge::app {

/// The step that this program writes.
int currentSchema();

/// Brings the library to `currentSchema()`.
/// @errors RecordUnreadable when a newer program wrote it; the database's otherwise, with nothing changed.
core::Result<void> migrate(Database& database);

} // namespace gauge::app
