#pragma once

#include "core/quantity/result.h"

#include <QLabel>
#include <QPointer>

#include <functional>

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
    /// Tells it until a field of the form is changed, and beyond that while `stands` says that it still
    /// holds.
    void tellUntilChanged(const Outcome& refusal, QWidget& form, const std::function<bool()>& stands = {});
    /// How all of them say temperatures from now on.
    static void useFahrenheit(bool on);

private:
    QPointer<QObject> m_watch; ///< of a form's fields, for what is told just now
};

} // namespace warmbench::ui
