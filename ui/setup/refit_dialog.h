#pragma once

#include <QDialog>
#include <QStringList>

namespace warmbench::ui {

/// Tells what a change of the house does to what stands there, before it is done.
class RefitDialog : public QDialog {
    Q_OBJECT
public:
    explicit RefitDialog(const QStringList& words, QWidget* parent);
};

} // namespace warmbench::ui
