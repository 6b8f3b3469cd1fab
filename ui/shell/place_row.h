#pragma once

#include <QWidget>

class QLabel;
class QMenu;
class QPushButton;

namespace warmbench::ui {

class FindBox;

/// The row over the places: a button for each, the book's name, and the field to find things in. Where the
/// row is too short for all, the field and the name shrink first; then the last places go into a menu behind
/// a button of its own. The place in sight always has its button.
class PlaceRow : public QWidget {
    Q_OBJECT
public:
    explicit PlaceRow(QWidget* parent = nullptr);

    /// Adds a button, which gets the name `<name>Place`; the places are numbered from 0.
    void addPlace(const QString& name, const QString& title);
    void setCurrent(int place);
    void setBookName(const QString& name);
    [[nodiscard]] FindBox& find() { return *m_find; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void placeChosen(int place);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    void arrange();
    [[nodiscard]] QList<bool> shownIn(int room) const;

    QList<QPushButton*> m_buttons;
    QPushButton* m_more;
    QMenu* m_moreMenu;
    QLabel* m_bookLabel;
    QString m_bookName;
    FindBox* m_find;
    int m_current = 0;
};

} // namespace warmbench::ui
