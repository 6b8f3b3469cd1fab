#pragma once

#include "core/round/round.h"
#include "ui/words/wording.h"

#include <QWidget>

#include <array>

class QLabel;
class QLineEdit;
class QPushButton;

namespace warmbench::ui {

class TroubleLabel;

/// One container of a round with the fields for what is found in it. Numbers and Enter are enough: Enter goes
/// to the next field and from the last one writes the check down, `+` writes it down at once, `-` leaves the
/// container for later, Up and Down go along the walk.
class CheckCard : public QWidget {
    Q_OBJECT
public:
    explicit CheckCard(QWidget* parent);

    /// Shows a stop with what was found already on that day, or empty fields.
    void showStop(const HouseBook& book, const round::Stop& stop, Day day, Day today, const Wording& wording);
    void setTitleFont(const QFont& font);
    /// What the book, or the card itself, has to say against the check that was entered.
    void tell(const QString& words);
    /// Puts the cursor into the first field.
    void begin();

Q_SIGNALS:
    void entered(const warmbench::RootCheck& check);
    void discardWanted(const QString& reason);
    void leftForLater();
    void stepped(int stops); ///< along the walk, back where negative

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum Field { Examined, Rooted, Callused, Alive, Dead, Grade, Note, FieldCount };

    void next(int field);
    void enter();
    void discard();
    void showLeft();
    [[nodiscard]] RootCheck check() const;
    [[nodiscard]] bool keyOf(int field, int key);

    const HouseBook* m_book = nullptr; ///< of the stop that is shown
    round::Stop m_stop;
    Day m_day;
    Day m_today;
    std::optional<RootCheck> m_asked; ///< the check that a question was asked about
    QLabel* m_code;
    QLabel* m_taxon;
    QLabel* m_where;
    QLabel* m_why;
    QLabel* m_before;
    TroubleLabel* m_words;
    std::array<QLineEdit*, FieldCount> m_fields{};
    QPushButton* m_enter;
    QPushButton* m_later;
    QPushButton* m_discard;
};

} // namespace warmbench::ui
