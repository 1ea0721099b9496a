// SPDX-License-Identifier: GPL-3.0-or-later
// A window with a show in it whose draws are few, and what the command line says of the same show.
#pragma once
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>
#include <memory>

#include "app/window/dock_layout.h"
#include "app/window/file_actions.h"
#include "app/window/main_window.h"
#include "core/file/write.h"

namespace howlmap::test {

class WindowFixture {
  public:
    app::MainWindow* window() { return window_.get(); }
    app::Document& document() { return window_->document(); }
    const Show& show() { return window_->document().show(); }

    void open(const char* example, int draws, const char* panel) {
        window_ = std::make_unique<app::MainWindow>();
        window_->resize(1280, 800);
        window_->show();
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        QVERIFY(
            window_->files().open_example(QString::fromLatin1(":/examples/%1.howlmap").arg(QLatin1String(example))));
        document().edit(QStringLiteral("Fewer draws"), [draws](Show& show) { show.tolerance.draws = draws; });
        window_->docks().bring_up(QString::fromLatin1(panel));
    }
    void close() {
        document().set_clean();
        window_.reset();
    }
    void settle() { QTRY_VERIFY_WITH_TIMEOUT(window_->analysis().counted() && window_->analysis().fresh(), 120000); }
    template <class Widget>
    Widget* find(const char* name) {
        return window_->findChild<Widget*>(QLatin1StringView(name));
    }
    /// What `howlmap check --json` prints for the show as it is now.
    QJsonObject checked() {
        const QString name = folder_.filePath(QStringLiteral("now.howlmap"));
        if (!save_atomically(name.toStdString(), write_show(show()))) return {};
        QProcess process;
        process.start(qEnvironmentVariable("HOWLMAP_PROGRAM"),
                      {QStringLiteral("check"), name, QStringLiteral("--json")});
        process.waitForFinished(120000);
        return QJsonDocument::fromJson(process.readAllStandardOutput()).object();
    }

  private:
    std::unique_ptr<app::MainWindow> window_;
    QTemporaryDir folder_;
};

}  // namespace howlmap::test
