#include "ui/plan/planning.h"

#include "ui/words/phrase_words.h"

namespace warmbench::ui {

Planning::Planning(HouseBook book, const RecipeLibrary& library, season::PlanRequest request, double seconds)
    : m_book(std::move(book)), m_library(library), m_request(request), m_seconds(seconds),
      m_thread([this](const std::stop_token& stop) { run(stop); }) {}

Planning::~Planning() = default;

void Planning::run(const std::stop_token& stop) {
    const season::MonthProblem month = season::monthProblem(m_book, m_library, m_request);
    planner::Options options;
    options.seconds = m_seconds;
    options.rounds = s_rounds;
    options.progress = [this](const planner::Progress& progress) {
        m_news.post([this, progress] { Q_EMIT progressed(progress); });
    };
    const auto solved = planner::solve(month.problem, options, stop);
    if (!solved) {
        const QString why = told(solved.refusal());
        m_news.post([this, why] { Q_EMIT refused(why); });
        return;
    }
    const season::Proposal proposal =
        season::proposalFrom(m_book, month, solved->answer, solved->compromises);
    m_news.post([this, proposal] { Q_EMIT finished(proposal); });
}

} // namespace warmbench::ui
