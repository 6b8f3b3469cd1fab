#include "core/book/query.h"
#include "tests/support/small_nursery.h"
#include "ui/shell/find_entries.h"
#include "ui/shell/main_window.h"
#include "ui/shell/memory_session.h"

#include <QApplication>
#include <QElapsedTimer>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <vector>

/// Times of the window with 20,000 slots and 5,000 batches: opening, selecting, finding, and stepping back
/// over 3,000 steps of the journal. Prints the median of each.
namespace warmbench::tests {
namespace {

void report(const char* what, int repeats, const std::function<void()>& work) {
    std::vector<double> milliseconds;
    for (int i = 0; i < repeats; ++i) {
        QElapsedTimer timer;
        timer.start();
        work();
        milliseconds.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    std::sort(milliseconds.begin(), milliseconds.end());
    std::printf("%-44s median %8.2f ms, best %8.2f, worst %8.2f\n", what,
                milliseconds[milliseconds.size() / 2], milliseconds.front(), milliseconds.back());
}

class NoBooks : public ui::BookOpener {
public:
    Result<std::unique_ptr<ui::BookSession>> open(const QString&) override { return Refusal{"none", "none"}; }
    Result<std::unique_ptr<ui::BookSession>> create(const QString&) override {
        return Refusal{"none", "none"};
    }
    const RecipeLibrary& recipes() override { return m_none; }
    [[nodiscard]] QString fileFilter() const override { return {}; }

private:
    RecipeLibrary m_none;
};

void run() {
    const HouseBook book = fullNursery(200, 5000);
    const Day today = smallNurseryToday();
    NoBooks opener;
    ui::MainWindow window(opener, today);
    window.setTheme(ui::Theme::Light);
    window.resize(1600, 1000);
    window.show();
    const auto show = [] { QApplication::processEvents(); };
    report("open the book in the window", 5, [&] {
        window.setSession(std::make_unique<ui::MemorySession>(book, QStringLiteral("large")));
        show();
    });
    std::vector<BatchId> standing;
    for (const auto& [id, batch] : book.all<Batch>())
        if (stayOn(book, id, today)) standing.push_back(id);
    std::size_t next = 0;
    report("select a batch that stands there", 41, [&] {
        window.choose(standing[next = (next + 97) % standing.size()]);
        show();
    });
    std::vector<ZoneId> zones;
    for (const auto& [id, zone] : book.all<Zone>()) zones.push_back(id);
    report("select a zone", 41, [&] {
        window.choose(zones[next = (next + 7) % zones.size()]);
        show();
    });
    report("find by a letter", 21, [&] { (void)ui::findEntries(book, today, QStringLiteral("a")); });
    report("find what is not there", 21,
           [&] { (void)ui::findEntries(book, today, QStringLiteral("nonesuch")); });
    auto lived = std::make_unique<ui::MemorySession>(book, QStringLiteral("large"));
    for (int i = 0; i < 3000; ++i)
        (void)lived->perform({Put<HandDay>{{{}, Day::fromNumber(30000 + i), i, "step"}}});
    window.setSession(std::move(lived));
    ui::BookSession& session = *window.session();
    report("the book 3,000 steps back", 5, [&] { (void)session.bookAfter(0); });
    const auto first = session.journal()->front();
    report("show the house 3,000 steps back", 5, [&] {
        (void)window.showPast(first);
        show();
        window.showNow();
    });
}

} // namespace
} // namespace warmbench::tests

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    warmbench::tests::run();
}
