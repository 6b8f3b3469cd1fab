#include "tests/faults/load/client.h"

#include "core/exchange/book/book_json.h"
#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <chrono>
#include <functional>
#include <random>

namespace warmbench::tests {
namespace {

/// Draws commands that get in each other's way.
class Drawer {
public:
    Drawer(const HouseBook& book, int client)
        : m_book(book), m_client(client), m_random(static_cast<std::uint64_t>(client) + 1) {}

    /// What the note of the n-th check is.
    [[nodiscard]] std::string note(int n) const { return std::to_string(m_client) + "/" + std::to_string(n); }
    Command check(int n) {
        const int examined = below(5) + 1;
        const int rooted = below(examined + 1);
        return {RecordCheck{{{},
                             m_small.struck,
                             below(4) + 1,
                             day("2027-02-16") + below(100),
                             examined,
                             rooted,
                             0,
                             examined - rooted,
                             0,
                             std::nullopt,
                             note(n)}}};
    }
    /// A planned batch of one pot on a slot of the warm zone, out of few slots and days.
    Command batch() {
        Batch batch = m_book.get<Batch>(m_small.struck);
        batch.id = {};
        batch.code.clear();
        batch.state = BatchState::Planned;
        batch.target.reset();
        batch.strikeDay = day("2027-06-01") + below(60);
        batch.containers = {{1, 5}};
        const Stay stay{{}, {}, Stage::Rooting, m_small.warm, batch.strikeDay, batch.strikeDay + 14, place()};
        return {AddBatch{batch, {stay}}};
    }
    /// Another slot for any of the planned batches.
    Command move() {
        std::vector<const Stay*> stays;
        for (const auto& [id, stay] : m_book.all<Stay>())
            if (stay.places.size() == 1) stays.push_back(&stay);
        if (stays.empty()) return batch();
        const Stay& stay = *stays[static_cast<std::size_t>(below(static_cast<int>(stays.size())))];
        return {MoveStay{stay.id, stay.zone, stay.from, stay.to, place()}};
    }
    int below(int end) { return std::uniform_int_distribution<int>(0, end - 1)(m_random); }

private:
    std::vector<Place> place() { return {{1, {below(4), below(6), 1, 1}}}; }

    const HouseBook& m_book;
    SmallBook m_small = smallBook();
    int m_client;
    std::mt19937_64 m_random;
};

/// Does one thing, tells how it went, and whether it was kept.
bool timed(ClientRun& run, const std::function<Outcome()>& act) {
    const auto begin = std::chrono::steady_clock::now();
    const Outcome refusal = act();
    run.microseconds.push_back(
        std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - begin)
            .count());
    const auto said = [&](const char* words) { return refusal->text().find(words) != std::string::npos; };
    if (!refusal) {
        ++run.kept;
        return true;
    }
    if (said("somebody was faster") || said("(just before: ") || said("changed meanwhile")) {
        ++run.faster;
    } else if (said("can't be changed just now") || said("could not be kept") || said("postgresql://")) {
        ++run.failed;
        run.trouble = refusal->text();
    } else {
        ++run.refused;
    }
    return false;
}

} // namespace

std::size_t hashOf(const HouseBook& book) {
    return std::hash<std::string>{}(writeBook(book));
}

ClientRun runClient(const std::string& address, int client, int commands, void (*wait)()) {
    ClientRun run;
    const auto book = opened(address, app::OpenMode::Write);
    Drawer drawer(book->book(), client);
    for (int n = 0; n < commands; ++n) {
        const int drawn = drawer.below(100);
        if (drawn < 50) {
            if (timed(run, [&] { return book->perform(drawer.check(n)); }))
                run.checks.push_back(drawer.note(n));
        } else if (drawn < 75) {
            timed(run, [&] { return book->perform(drawer.batch()); });
        } else if (drawn < 95 || book->undoWords().empty()) {
            timed(run, [&] { return book->perform(drawer.move()); });
        } else {
            const bool check = book->undoWords().starts_with("Record a root check");
            if (timed(run, [&] { return book->undo(); }) && check) run.checks.pop_back();
        }
    }
    wait();
    if (const auto taken = book->catchUp(); !taken) {
        ++run.failed;
        run.trouble = taken.refusal().text();
    }
    run.lastBook = hashOf(book->book());
    return run;
}

} // namespace warmbench::tests
