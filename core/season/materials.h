#pragma once

#include "core/book/house_book.h"

#include <map>
#include <string>

namespace warmbench::season {

/// What striking some batches takes, by kind of container, component of medium, and hormone.
struct Materials {
    std::map<std::string, int> containers;                    ///< by kind
    std::map<std::string, std::int64_t> componentMillilitres; ///< of medium, by component
    std::map<std::string, std::int64_t> cuttingsByHormone;    ///< by hormone and its form

    /// Adds what one batch takes.
    void add(const HouseBook& book, const Batch& batch);
};

} // namespace warmbench::season
