#pragma once

#include "core/planner/answer.h"
#include "core/planner/problem.h"
#include "core/quantity/result.h"

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

namespace warmbench::planner {

/// What the search knows at one moment.
struct Progress {
    double seconds = 0;      ///< since the call
    std::int64_t best = 0;   ///< thousandths, total of the best answer so far
    std::int64_t bound = 0;  ///< thousandths, proven
    std::int64_t rounds = 0; ///< rounds of search so far
};

struct Options {
    double seconds = 1.0;               ///< wall-clock limit; ignored when `rounds` is given
    std::optional<std::int64_t> rounds; ///< same answer on every machine and thread count for one seed
    std::uint64_t seed = 1;
    int threads = 2;
    /// The plans in `previous` are good and the world has changed a little only: a cool search goes on from
    /// them.
    bool goesOn = false;
    std::function<void(const Progress&)> progress; ///< called from one thread at a time
};

/// Why the search ended.
enum class Ending : std::uint8_t { Proven, TimeUp, RoundsUp, Stopped };

struct Solved {
    Answer answer;
    Ending ending = Ending::TimeUp;
    std::int64_t rounds = 0;
    std::vector<Compromise> compromises; ///< in the order of the batches, as far as there was time
};

/// Refuses a problem of more days on which something may stand, times zones, than fits into memory.
[[nodiscard]] Outcome checkSize(const Problem& problem);

/// Solves a problem: a plan that keeps every rule of the problem format, of the least cost that is found.
/// Refused where pinned and held batches together cannot be kept (the refusal says which), and by
/// `checkSize`. `stop` ends the search within 20 ms with the best answer so far; refused where pinned batches
/// were not placed by then.
[[nodiscard]] Result<Solved> solve(const Problem& problem, const Options& options, std::stop_token stop = {});

} // namespace warmbench::planner
