#pragma once

#include "core/book/house_book.h"

namespace warmbench::forecast {

class BookForecast;

/// Days on which stays end when the slots of every struck batch are free as its forecast says, where that is
/// another day than the stay's own. A batch that is late keeps its slots for as much longer, and comes later
/// from its weaning, but only until the next batch is to stand there; one that is early gives up only the
/// slots that it leaves last.
[[nodiscard]] std::map<StayId, Day> stayEnds(const HouseBook& book, const BookForecast& forecast);

} // namespace warmbench::forecast
