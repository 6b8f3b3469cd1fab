#define CATCH_CONFIG_EXTERNAL_INTERFACES
#include "ui/plan/planning.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QLocale>

#include <memory>

namespace {

constexpr std::int64_t roundsOfSearch = 400;

/// One application for the whole run, with no display and in British English; it plans without a clock.
class OneApplication : public Catch::TestEventListenerBase {
public:
    using TestEventListenerBase::TestEventListenerBase;

    void testRunStarting(const Catch::TestRunInfo&) override {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        warmbench::ui::Planning::searchByRounds(roundsOfSearch);
        static int argumentCount = 1;
        static char name[] = "tests_ui";
        static char* arguments[] = {name, nullptr};
        m_application = std::make_unique<QApplication>(argumentCount, arguments);
    }
    void testRunEnded(const Catch::TestRunStats&) override { m_application.reset(); }

private:
    std::unique_ptr<QApplication> m_application;
};

} // namespace

CATCH_REGISTER_LISTENER(OneApplication)
