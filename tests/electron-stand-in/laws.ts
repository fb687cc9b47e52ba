/**
 * What Electron 45 does, whatever one would expect of it, and what the desktop host's main does about it. Paths are those of
 * github.com/electron/electron. Each law is played by the stand-in and has a test in laws/ that runs the real main, and once
 * more a main that was broken so that it does not keep the law.
 */
export const laws = {
  'ready-after-entry': {
    law: 'Electron becomes ready only when the entry has been evaluated: a top-level wait for it never ends',
    source:
      'lib/browser/init.ts, appCodeLoaded; shell/common/node_bindings.cc, JoinAppCode; docs/api/app.md, ready',
    main: 'waits for it outside its own evaluation',
  },
  'faults-end-nothing': {
    law: 'What is thrown while main loads, or rejected later, is told and ends nothing',
    source:
      'default_app/main.ts; lib/browser/init.ts; shell/browser/electron_browser_main_parts.cc, warn-with-error-code',
    main: 'gives up with a sentence, a sign for the launcher, and an exit code',
  },
  'first-show': {
    law: 'That a window came up cannot be told by a clock: a page may paint late, or never',
    source: 'docs/api/browser-window.md, ready-to-show',
    main: 'leaves a sign at the first show, and not before',
  },
  'signal-once': {
    law: 'The first SIGINT asks the program to quit, as a user would; the second one kills it',
    source: 'shell/browser/electron_browser_main_parts_posix.cc, GracefulShutdownHandler',
    main: 'has the record closed when it quits',
  },
  'will-quit': {
    law: 'A quit goes on at once unless will-quit is prevented, and then it must be asked for again',
    source: 'shell/browser/browser.cc, NotifyAndShutdown',
    main: 'holds it once, until the record is closed',
  },
  'lock-needs-links': {
    law: 'The lock is a symbolic link: where there are none it is refused as if another program had it',
    source: 'shell/browser/api/electron_api_app.cc, RequestSingleInstanceLock, LOCK_ERROR',
    main: 'goes on where nobody holds it; the record’s own lock decides',
  },
  'second-instance': {
    law: 'A second start is told to the first, which must show itself',
    source: 'shell/browser/api/electron_api_app.cc, OnSecondInstance; docs/api/app.md, second-instance',
    main: 'brings its window to the front; the second ends',
  },
  'second-while-closing': {
    law: 'A program that holds its quit still has the lock and still takes second starts, without a window',
    source: 'shell/browser/api/electron_api_app.cc, NotificationCallbackWrapper, is_shutting_down',
    main: 'marks that it closes; the second start waits and opens the window',
  },
  'sandbox-before-ready': {
    law: 'The sandbox for all pages can be asked for only before ready',
    source: 'shell/browser/api/electron_api_app.cc, EnableSandbox',
    main: 'asks for it first of all',
  },
  'schemes-before-ready': {
    law: 'A scheme becomes standard and secure only before ready',
    source: 'shell/browser/api/electron_api_protocol.cc, RegisterSchemesAsPrivileged',
    main: 'registers its own while it loads',
  },
  'session-after-ready': {
    law: 'There is no session before ready',
    source: 'shell/browser/api/electron_api_session.cc, FromPartition',
    main: 'sets its guards in the session once it is ready',
  },
  'windows-after-ready': {
    law: 'There are no windows and no screens before ready',
    source: 'shell/browser/api/electron_api_base_window.cc, New; lib/browser/api/screen.ts',
    main: 'makes its window once it is ready',
  },
  'user-data-before-ready': {
    law: 'Chromium uses the user data folder from ready on, wherever it is set to later',
    source: 'docs/api/app.md, app.setPath; shell/browser/browser.cc, DidFinishLaunching',
    main: 'sets it while it loads, before it asks for the lock',
  },
  'menu-makes-keys': {
    law: 'Keys for copying, zooming and the full screen come from the menu; without one there are none',
    source: 'lib/browser/api/menu-item-roles.ts; lib/browser/default-menu.ts',
    main: 'has a menu with those roles, and no reload or developer tools',
  },
  'no-context-menu': {
    law: 'There is no context menu unless the host makes one',
    source: 'docs/api/web-contents.md, context-menu',
    main: 'offers editing in fields, copying of what is marked, and else nothing',
  },
  'overwrites-silently': {
    law: 'The save dialog of GTK overwrites without a question unless it is told to ask',
    source: 'shell/browser/ui/file_dialog_linux.cc, SetOverwriteConfirmationShown',
    main: 'tells it to ask',
  },
  'no-key-ring': {
    law: 'Where the platform has no key ring, to seal a text throws, or on Linux seals with a password that stands in Electron’s sources',
    source:
      'shell/browser/api/electron_api_safe_storage.cc, IsEncryptionAvailable, EncryptString; docs/api/safe-storage.md, basic_text',
    main: 'asks first, and keeps the password of the archive in a file for this user alone, and says so',
  },
  'downloads-go-unsaid': {
    law: 'A download asks for its place under the blob’s address, and its page never hears how it ended',
    source:
      'shell/browser/electron_download_manager_delegate.cc, OnDownloadPathGenerated; docs/api/download-item.md, done',
    main: 'refuses downloads; what the page saves it asks for, and is answered when it is on disk or not to be',
  },
  'page-gone': {
    law: 'A page whose process has ended stays a blank window',
    source: 'docs/api/web-contents.md, render-process-gone',
    main: 'loads it again once; the next time it tells the person and gives the address of the local host',
  },
  'page-hung': {
    law: 'A page that no longer answers is reported, and left as it is',
    source: 'docs/api/browser-window.md, unresponsive; docs/api/web-contents.md, forcefullyCrashRenderer',
    main: 'waits for it a while, then ends its process and loads it again, unless it answers meanwhile',
  },
  'graphics-gone': {
    law: 'When the process that draws ends, another one takes its place, and what a canvas held may be gone',
    source: 'docs/api/app.md, child-process-gone',
    main: 'loads the page again once; the next time it tells the person',
  },
  'preload-may-fail': {
    law: 'A page whose preload failed comes all the same, and cannot ask for anything',
    source: 'docs/api/web-contents.md, preload-error; lib/sandboxed_renderer/preload.ts',
    main: 'loads it again once; the next time it tells the person',
  },
  'page-not-loaded': {
    law: 'A page that cannot be loaded never paints, so its window never shows',
    source: 'docs/api/web-contents.md, did-fail-load; docs/api/browser-window.md, ready-to-show',
    main: 'tries once more, then shows the window and tells the person',
  },
  'preload-is-commonjs': {
    law: 'A sandboxed preload is the body of a function, not a module; when it fails the page comes without it',
    source: 'lib/sandboxed_renderer/preload.ts, runPreloadScript',
    main: 'has a preload that is one CommonJS file',
  },
  'bridge-refuses-proxies': {
    law: 'A Proxy, such as a reactive state of the page, cannot cross the context bridge',
    source: 'shell/renderer/api/electron_api_context_bridge.cc, IsPlainObject, IsProxy',
    main: 'takes texts alone, as the local host does',
  },
  'sender-may-be-gone': {
    law: 'The frame that asks may be null, or show another page by the time it is heard',
    source: 'docs/api/structures/ipc-main-invoke-event.md, senderFrame',
    main: 'answers its own page alone',
  },
  'permissions-granted': {
    law: 'Every permission is granted unless the handlers for requests and for checks say otherwise',
    source: 'shell/browser/electron_permission_manager.cc, RequestPermissionsWithDetails',
    main: 'grants its own page the whole screen, the lit screen, the camera and the choice of a serial line, and nothing else',
  },
  'serial-lines-unchosen': {
    law: 'A serial line that is asked for is none unless the choice is taken over; a handler for devices is then asked at each opening',
    source:
      'shell/browser/serial/serial_chooser_controller.cc, OnGetDevices; shell/browser/serial/serial_chooser_context.cc, HasPortPermission',
    main: 'lets a person choose, and its own page open what was chosen since the start, and nothing else',
  },
  'camera-and-microphone-are-one': {
    law: 'Camera and microphone are asked for as one permission, `media`; which of them stands beside it',
    source:
      'shell/browser/web_contents_permission_helper.cc, RequestMediaAccessPermission, CheckMediaAccessPermission',
    main: 'grants its own page the camera alone, never with the microphone',
  },
  'pages-lead-away': {
    law: 'A page may lead its window anywhere, open others, and hold frames, unless it is kept from it',
    source: 'docs/api/web-contents.md, will-navigate, will-frame-navigate, setWindowOpenHandler',
    main: 'keeps it at its own address, without frames and further windows',
  },
  'sleep-waits-for-nobody': {
    law: 'The machine sleeps as soon as the program has heard of it',
    source: 'docs/api/power-monitor.md, suspend',
    main: 'has the log of the record worked in before it returns',
  },
  'log-off-waits-for-nobody': {
    law: 'Windows asks the windows before it logs off, and ends the program once they have heard of it',
    source: 'docs/api/browser-window.md, query-session-end and session-end',
    main: 'has the log of the record worked in at the question, and closes it at the end',
  },
  'shutdown-waits-if-asked': {
    law: 'A shutdown of the system waits for the program only where it is prevented',
    source: 'docs/api/power-monitor.md, shutdown; lib/browser/api/power-monitor.ts',
    main: 'prevents it and quits, so that the record is closed',
  },
} as const satisfies Readonly<
  Record<string, { readonly law: string; readonly source: string; readonly main: string }>
>

export type LawName = keyof typeof laws
