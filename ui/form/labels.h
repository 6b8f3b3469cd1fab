#pragma once

#include "core/quantity/result.h"

#include <QLabel>

namespace warmbench::ui {

/// A label that breaks its lines; `rank` is its place in the style sheet, such as `quiet`.
QLabel* wrappedLabel(QWidget* parent, const char* rank = nullptr);

/// Tells what went wrong, and is out of sight while there is nothing to tell.
class TroubleLabel : public QLabel {
    Q_OBJECT
public:
    explicit TroubleLabel(const QString& name, QWidget* parent = nullptr);
    void tell(const QString& words);
    void tell(const Outcome& refusal);
    /// How all of them say temperatures from now on.
    static void useFahrenheit(bool on);
};

} // namespace warmbench::ui
