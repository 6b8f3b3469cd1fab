#pragma once

#include "ui/placing/placing_hand.h"
#include "ui/theme/type.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;

namespace warmbench::ui {

/// What is carried and what the zone aimed at is to it, in words, with all that can be done by button: over
/// the map while something is carried, out of sight else. Which containers are carried is written there as
/// numbers, such as `1-4, 7`. Assistive programs are told of every new aim and question.
class PlacingBar : public QFrame {
    Q_OBJECT
public:
    explicit PlacingBar(PlacingHand& hand, QWidget* parent = nullptr);

    void setType(const TypeSizes& type);

Q_SIGNALS:
    /// The map should have the keys again.
    void done();

private:
    void refresh();
    void showContainers();
    void readContainers();
    void tellWords();

    PlacingHand& m_hand;
    QLabel* m_title;
    QLabel* m_words;
    QLabel* m_containersLabel;
    QLineEdit* m_containers;
    QPushButton* m_turn;
    QPushButton* m_place;
    QPushButton* m_back;
    QString m_told;
};

} // namespace warmbench::ui
