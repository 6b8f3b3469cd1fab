#pragma once

#include <QGuiApplication>

#include <memory>

namespace warmbench::app {

/// A Qt application for calls that paint and show nothing: it works where there is no display, and Qt says
/// nothing about that. One for the whole process; the one that is there is kept.
[[nodiscard]] std::unique_ptr<QGuiApplication> applicationWithoutScreen();

} // namespace warmbench::app
