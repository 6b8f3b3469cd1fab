#pragma once

#include "app/storage/book_file.h"
#include "core/exchange/logger/kept_readings.h"

#include <string>

namespace warmbench::app {

/// What becomes of a file's readings in a book, in a line for a person each.
void sayToKeep(const HouseBook& book, const ReadingPlace& place, const exchange::KeptReadings& kept);

/// Keeps a file's readings in a book; the exit status.
int keepReadings(const std::string& book, const ReadingPlace& place, const exchange::KeptReadings& kept);

/// What readings a book has, and where the root zone left the range of cuttings in the 30 days up to `day`.
int tellKept(const HouseBook& book, Day day);

} // namespace warmbench::app
