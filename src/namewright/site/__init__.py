"""The same application inside a browser: a folder of static files that hold Python, the engine and its screens.

``build`` makes the folder, ``bridge`` answers requests inside it; ``static`` is what runs around Python: a shell page,
a service worker that sends the screens' requests on, and a worker that holds Python. Out of scope: any screen.
"""
