#pragma once

#include <QWidget>

namespace warmbench::ui {

struct TypeSizes;

/// What the window shows while no book is open.
class StartPage : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(QWidget* parent = nullptr);
    void setType(const TypeSizes& type);

Q_SIGNALS:
    void newWanted();
    void openWanted();
};

} // namespace warmbench::ui
