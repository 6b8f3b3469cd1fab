#pragma once

#include "core/round/due.h"
#include "core/round/round.h"
#include "ui/place/place.h"

class QLabel;
class QProgressBar;
class QStackedWidget;
class QTreeWidget;

namespace warmbench::ui {

class CheckCard;
class DraftWatch;
class DueCard;

/// The round of a day: the containers worth a look in walking order, what is due, and a card to enter what
/// was found in the one at hand.
class RoundPlace : public Place {
    Q_OBJECT
public:
    explicit RoundPlace(QWidget* parent);
    void showBook(const BookView& view) override;
    bool resume(const Draft& draft) override;
    /// Goes to what is due of a batch, or to the first of its containers that is worth a look; false where
    /// the round of the day has nothing of the kind.
    bool goToDue(BatchId batch, round::Task task);
    bool goToStop(BatchId batch);

private:
    void setStops(const BookView& view);
    void listStops();
    void listDue();
    void showProgress();
    void showCard();
    void showDueCard(const round::Due& due);
    void showCheckCard(const round::Stop& stop);
    void goTo(std::size_t stop);
    void goToDueLine(std::size_t line);
    void goToNext();
    void step(int stops);
    void record(const RootCheck& check);
    void discardContainer(const QString& reason);
    /// Does what was found in the container at hand, and shows the next one.
    void performAndGoOn(const Command& command);
    void doDue(const Command& command);
    void wean(BatchId batch, Day day);
    [[nodiscard]] std::optional<std::size_t> firstLeft(std::size_t from) const;
    [[nodiscard]] QString foundWords(const round::Stop& stop) const;

    const HouseBook* m_book = nullptr; ///< the book that is shown
    Day m_day;
    Day m_today;
    std::vector<round::Stop> m_stops; ///< as the round began
    std::vector<round::Due> m_due;
    std::size_t m_at = 0; ///< the stop that the card shows
    bool m_ahead = false; ///< what was done last goes on to the next stop
    bool m_onDue = false; ///< the card shows what is due
    QLabel* m_title;
    QLabel* m_count;
    QProgressBar* m_bar;
    QTreeWidget* m_stopList;
    QLabel* m_dueTitle;
    QTreeWidget* m_dueList;
    QStackedWidget* m_cards;
    CheckCard* m_check;
    DueCard* m_dueCard;
    DraftWatch* m_checkWatch;
    DraftWatch* m_dueWatch;
    QLabel* m_nothing;
};

} // namespace warmbench::ui
