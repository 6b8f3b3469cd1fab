#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace warmbench::ui {

class FindBox;

/// The row over the places: a button for each, the book's name, and the field to find things in.
class PlaceRow : public QWidget {
    Q_OBJECT
public:
    explicit PlaceRow(QWidget* parent = nullptr);

    /// Adds a button, which gets the name `<name>Place`; the places are numbered from 0.
    void addPlace(const QString& name, const QString& title);
    void setCurrent(int place);
    void setBookName(const QString& name);
    [[nodiscard]] FindBox& find() { return *m_find; }

Q_SIGNALS:
    void placeChosen(int place);

private:
    QHBoxLayout* m_row;
    QList<QPushButton*> m_buttons;
    QLabel* m_bookName;
    FindBox* m_find;
};

} // namespace warmbench::ui
