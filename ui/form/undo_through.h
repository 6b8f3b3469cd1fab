#pragma once

#include <QObject>

class QLineEdit;
class QWidget;

namespace warmbench::ui {

/// Lets the keys of undo and redo go on to a window's own undo and redo while the cursor stands in a field
/// that has nothing to take back, or to do again. A field of Qt keeps them to itself even then.
class UndoThrough : public QObject {
    Q_OBJECT
public:
    /// For the fields of `window` and none of its dialogs.
    explicit UndoThrough(QWidget& window);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget& m_window;
};

} // namespace warmbench::ui
