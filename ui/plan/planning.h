#pragma once

#include "core/season/proposal.h"
#include "ui/post/postbox.h"

#include <cstdint>
#include <optional>

#ifndef Q_MOC_RUN // which reads no <stop_token>
#include "core/planner/planner.h"

#include <thread>
#endif

namespace warmbench::ui {

/// One run of the planner on a copy of a book, in a thread of its own; signals come in the thread of the
/// owner. Destroying it stops the run and waits for it, which takes milliseconds.
class Planning : public QObject {
    Q_OBJECT
public:
    /// Starts at once. `library` must outlive it.
    Planning(HouseBook book, const RecipeLibrary& library, season::PlanRequest request, double seconds);
    ~Planning() override;

    /// From now on every run searches so many rounds, whatever its seconds: for tests and pictures, which
    /// must find the same plan on every machine. Call before any run is made.
    static void searchByRounds(std::int64_t rounds) { s_rounds = rounds; }

    /// The book as it was planned on.
    [[nodiscard]] const HouseBook& book() const { return m_book; }
    /// Ends the search; what it has found so far is still told by `finished`.
    void stop() { m_thread.request_stop(); }

Q_SIGNALS:
    void progressed(const warmbench::planner::Progress& progress);
    void finished(const warmbench::season::Proposal& proposal);
    /// What stands or is fixed cannot be kept.
    void refused(const QString& why);

private:
    void run(const std::stop_token& stop);

    static inline std::optional<std::int64_t> s_rounds;

    HouseBook m_book;
    const RecipeLibrary& m_library;
    season::PlanRequest m_request;
    double m_seconds;
    Postbox m_news;
    std::jthread m_thread; ///< last, so that it ends before what it uses
};

} // namespace warmbench::ui
