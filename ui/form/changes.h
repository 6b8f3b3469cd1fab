#pragma once

#include <functional>

class QObject;
class QWidget;

namespace warmbench::ui {

/// Does something whenever a field of a form that is there now is changed, or one of its buttons pressed that
/// does not close it, for as long as `watch` lives; the last of it may be that `watch` is deleted.
void onChange(QWidget& form, QObject& watch, const std::function<void()>& changed);

} // namespace warmbench::ui
